package org.jawroom.report.tally;

import java.util.List;
import org.jawroom.placement.job.JobOutcome;
import org.jawroom.placement.set.SetOutcome;
import org.jawroom.placement.standing.StandingOutcome;

/**
 * What is worked out for a whole shop beside its pairings.
 *
 * @param jobs one outcome for each job and pairing: jobs, then machines, then vises
 * @param standing one outcome for each vise that stands on a machine, in input order
 * @param sets one outcome for each set and machine on which it is to stand: sets, then machines
 */
public record ShopOutcomes(
    List<JobOutcome> jobs, List<StandingOutcome> standing, List<SetOutcome> sets) {
  public ShopOutcomes {
    jobs = List.copyOf(jobs);
    standing = List.copyOf(standing);
    sets = List.copyOf(sets);
  }

  /** Those of a shop without standing vises and sets. */
  public static ShopOutcomes ofJobs(List<JobOutcome> jobs) {
    return new ShopOutcomes(jobs, List.of(), List.of());
  }
}
