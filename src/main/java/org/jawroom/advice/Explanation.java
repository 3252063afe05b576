package org.jawroom.advice;

import java.util.List;
import java.util.Optional;
import org.jawroom.clearance.gap.Limit;
import org.jawroom.placement.bolting.Miss;
import org.jawroom.placement.search.Alternative;
import org.jawroom.placement.search.Roomiest;
import org.jawroom.shop.machine.Sides;

/**
 * The full explanation of one pairing.
 *
 * @param advice the outcome and its remedies
 * @param pairs every part–guard pair at the recommended placement, over its openings, in ascending
 *     order of margin; empty without such a placement
 * @param roomiest the roomiest placement over the same openings, if it has more margin than the
 *     recommended one
 * @param others each other turn and mount that holds somewhere, in order of preference
 * @param misses each turn and mount that does not hold, the nearest to holding first
 * @param reachShort how far the work area protrudes from the spindle's reach on each side at the
 *     recommended placement, 0 where it does not
 */
public record Explanation(
    Advice advice,
    List<Limit> pairs,
    Optional<Roomiest> roomiest,
    List<Alternative> others,
    List<Miss> misses,
    Optional<Sides<Long>> reachShort) {
  public Explanation {
    pairs = List.copyOf(pairs);
    others = List.copyOf(others);
    misses = List.copyOf(misses);
  }
}
