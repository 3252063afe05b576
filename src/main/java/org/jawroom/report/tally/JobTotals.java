package org.jawroom.report.tally;

import java.util.ArrayList;
import java.util.List;
import org.jawroom.placement.job.JobOutcome;
import org.jawroom.shop.Shop;

/**
 * Statistics of the jobs of a block of pairings, accumulated pairing by pairing. Memory grows with
 * the number of jobs times that of machines, not with pairings.
 */
public final class JobTotals {
  private final Shop shop;
  private final boolean detailed;
  private final ShopBlock block;
  private final List<JobTally> onMachines = new ArrayList<>();

  /**
   * Starts without any pairing.
   *
   * @param detailed whether to keep the best and the nearest outcome of each job on each machine;
   *     they take far more memory than the counts
   */
  JobTotals(Shop shop, boolean detailed, ShopBlock block) {
    this.shop = shop;
    this.detailed = detailed;
    this.block = block;
    for (int i = 0; i < shop.jobs().size() * block.machines(); i++) {
      onMachines.add(new JobTally());
    }
  }

  /**
   * Adds the next pairing.
   *
   * @param outcomes one for each job of the shop, in order
   */
  void add(int machine, List<JobOutcome> outcomes) {
    if (outcomes.size() != shop.jobs().size()) {
      throw new IllegalArgumentException(
          outcomes.size() + " outcomes of a pairing for " + shop.jobs().size() + " jobs");
    }
    for (int job = 0; job < outcomes.size(); job++) {
      JobOutcome outcome = outcomes.get(job);
      if (detailed) {
        on(machine, job).keep(shop.settings(), outcome);
      } else {
        on(machine, job).add(outcome);
      }
    }
  }

  /** Adds those of another block, of each machine the vises in order. */
  void add(JobTotals others) {
    for (int machine = others.block.machine(); machine < others.block.endOfMachines(); machine++) {
      for (int job = 0; job < shop.jobs().size(); job++) {
        on(machine, job).add(shop.settings(), others.on(machine, job), detailed);
      }
    }
  }

  /** Whether the best and the nearest outcomes are kept. */
  public boolean isDetailed() {
    return detailed;
  }

  /** A job on all machines, without the best and the nearest. */
  public JobTally of(int job) {
    JobTally all = new JobTally();
    for (int machine = block.machine(); machine < block.endOfMachines(); machine++) {
      all.add(shop.settings(), on(machine, job), false);
    }
    return all;
  }

  /** A job on the machine with that index. */
  public JobTally on(int machine, int job) {
    return onMachines.get(job * block.machines() + machine - block.machine());
  }
}
