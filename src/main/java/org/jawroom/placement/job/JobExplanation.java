package org.jawroom.placement.job;

import java.util.List;
import org.jawroom.clearance.Limit;

/**
 * The outcome of a job with the details of its placement.
 *
 * @param pairs every part–guard pair there, over the openings of the job, in ascending order of
 *     margin; empty without a placement
 */
public record JobExplanation(JobOutcome outcome, List<Limit> pairs) {
  public JobExplanation {
    pairs = List.copyOf(pairs);
  }
}
