package org.jawroom.placement.job;

import java.util.List;
import java.util.Optional;
import org.jawroom.clearance.gap.Limit;
import org.jawroom.placement.pairing.Layout;
import org.jawroom.placement.space.Play;

/**
 * The outcome of a job with the details of its placement.
 *
 * @param pairs every part–guard pair there, over the openings of the job, in ascending order of
 *     margin; empty without a placement
 * @param layout the geometry there, the workpiece among the parts; empty likewise
 * @param range how far the vise may stand from there; empty without a placement of margin ≥ 0
 */
public record JobExplanation(
    JobOutcome outcome, List<Limit> pairs, Optional<Layout> layout, Optional<Play> range) {
  public JobExplanation {
    pairs = List.copyOf(pairs);
  }
}
