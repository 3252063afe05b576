package org.jawroom.placement.job;

import java.util.List;
import org.jawroom.clearance.Limit;

/**
 * A job on a machine with a vise, and a closer look at its place.
 *
 * @param pairs every part–guard pair there, over the openings of the job, from tightest to loosest;
 *     empty without a place
 */
public record JobExplanation(JobOutcome outcome, List<Limit> pairs) {
  public JobExplanation {
    pairs = List.copyOf(pairs);
  }
}
