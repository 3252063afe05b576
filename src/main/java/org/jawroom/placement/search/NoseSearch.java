package org.jawroom.placement.search;

import java.util.List;
import java.util.OptionalLong;
import org.jawroom.clearance.Certainty;
import org.jawroom.clearance.Situation;
import org.jawroom.clearance.guard.NoseGuard;
import org.jawroom.clearance.part.Part;
import org.jawroom.geometry.Box;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Length;
import org.jawroom.geometry.Orientation;
import org.jawroom.placement.space.Place;

/** Computes how low the spindle nose may come over a placed vise. */
final class NoseSearch {
  private NoseSearch() {}

  /**
   * The least height within {@code heights} from which upward every guard that follows the nose
   * keeps margin ≥ 0 from every part that counts while cutting. Empty if not even the greatest
   * height does, if a part reaches up without end, or if there is no such guard.
   */
  static OptionalLong lowest(
      List<NoseGuard> guards,
      List<Part> parts,
      Orientation turn,
      Place place,
      Interval openings,
      Interval heights) {
    if (guards.isEmpty()) {
      return OptionalLong.empty();
    }
    long lowest = heights.lo();
    for (NoseGuard guard : guards) {
      for (Part part : parts) {
        if (part.situation() == Situation.CUTTING) {
          Box box = part.over(openings, turn).at(place.x(), place.y());
          long need = guard.clearance() + guard.tolerance() + part.tolerance();
          long beside = Math.max(box.x().gapTo(guard.plan().x()), box.y().gapTo(guard.plan().y()));
          if (beside < need) {
            lowest = Math.max(lowest, lowestOver(box.z(), guard.fromNose(), need, heights));
          }
        }
      }
    }
    return lowest <= heights.hi() && Certainty.hasEnd(lowest)
        ? OptionalLong.of(lowest)
        : OptionalLong.empty();
  }

  /**
   * The least height from which upward a guard is clear of {@code part}: above it, or, if the guard
   * hangs low enough, below it at every height in range. {@link Length#ENDLESS} if there is none.
   */
  private static long lowestOver(Interval part, Interval fromNose, long need, Interval heights) {
    long clearOver = part.hi() + need - fromNose.lo();
    long clearUnder = part.lo() - need - fromNose.hi();
    // The part is hit strictly between the two heights; nowhere if both extents and the need are 0.
    if (heights.hi() <= clearUnder || clearOver <= clearUnder) {
      return heights.lo();
    }
    return clearOver <= heights.hi() ? clearOver : Length.ENDLESS;
  }
}
