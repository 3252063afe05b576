package org.jawroom.advice;

import java.util.List;
import java.util.Optional;
import org.jawroom.clearance.Limit;
import org.jawroom.placement.bolting.Miss;
import org.jawroom.placement.search.Alternative;
import org.jawroom.placement.search.Roomiest;
import org.jawroom.shop.Sides;

/**
 * Everything there is to say of one pairing.
 *
 * @param advice the outcome and what would make it fit
 * @param pairs every part–guard pair at the recommended place, over its openings, from tightest to
 *     loosest; empty without such a place
 * @param roomiest the roomiest place over the same openings, where it has more margin than the
 *     recommended
 * @param others each other turn and mount that holds somewhere, in the order of preference
 * @param misses each turn and mount that does not hold, the nearest to holding first
 * @param reachShort at the recommended place, how far the work area sticks out of the spindle's
 *     reach on each side, 0 where it does not
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
