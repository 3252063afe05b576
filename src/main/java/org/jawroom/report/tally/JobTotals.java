package org.jawroom.report.tally;

import java.util.ArrayList;
import java.util.List;
import org.jawroom.placement.job.JobOutcome;
import org.jawroom.shop.Shop;

/**
 * Statistics of the jobs of a whole shop, accumulated pairing by pairing. Memory grows with the
 * number of jobs times that of machines, not with pairings.
 */
public final class JobTotals {
  private final Shop shop;
  private final boolean detailed;
  private final List<JobTally> jobs = new ArrayList<>();
  private final List<JobTally> onMachines = new ArrayList<>();

  /**
   * Starts without any pairing.
   *
   * @param detailed whether to keep the best and the nearest outcome of each job on each machine;
   *     they take far more memory than the counts
   */
  JobTotals(Shop shop, boolean detailed) {
    this.shop = shop;
    this.detailed = detailed;
    for (int job = 0; job < shop.jobs().size(); job++) {
      jobs.add(new JobTally());
    }
    for (int i = 0; i < shop.jobs().size() * shop.machines().size(); i++) {
      onMachines.add(new JobTally());
    }
  }

  /**
   * Adds the next pairing.
   *
   * @param outcomes one for each job of the shop, in order
   */
  void add(int machine, List<JobOutcome> outcomes) {
    if (outcomes.size() != jobs.size()) {
      throw new IllegalArgumentException(
          outcomes.size() + " outcomes of a pairing for " + jobs.size() + " jobs");
    }
    for (int job = 0; job < outcomes.size(); job++) {
      JobOutcome outcome = outcomes.get(job);
      jobs.get(job).add(outcome);
      if (detailed) {
        on(machine, job).keep(shop.settings(), outcome);
      } else {
        on(machine, job).add(outcome);
      }
    }
  }

  /** Whether the best and the nearest outcomes are kept. */
  public boolean isDetailed() {
    return detailed;
  }

  /** A job on all machines, without the best and the nearest. */
  public JobTally of(int job) {
    return jobs.get(job);
  }

  /** A job on one machine. */
  public JobTally on(int machine, int job) {
    return onMachines.get(job * shop.machines().size() + machine);
  }
}
