package org.jawroom.placement.bolting.slot;

import java.util.List;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Ends;
import org.jawroom.geometry.Orientation;

/**
 * The anchors of a mount in one turn, seen from slots along one axis, with the vise's origin at
 * that of the table frame. Half-nanometres.
 */
final class TurnedAnchors {
  private final long leastHigh;
  private final long greatestLow;
  private final long[] across;

  TurnedAnchors(List<Anchor> anchors, Orientation turn, Axis slots) {
    long least = Long.MAX_VALUE;
    long greatest = Long.MIN_VALUE;
    this.across = new long[2 * anchors.size()];
    for (int i = 0; i < anchors.size(); i++) {
      Ends ends = anchors.get(i).along(turn, slots);
      least = Math.min(least, ends.hi());
      greatest = Math.max(greatest, ends.lo());
      Ends its = anchors.get(i).across(turn, slots);
      across[2 * i] = its.lo();
      across[2 * i + 1] = its.hi();
    }
    this.leastHigh = least;
    this.greatestLow = greatest;
  }

  /** The least of the high ends along the slots. */
  long leastHigh() {
    return leastHigh;
  }

  /** The greatest of the low ends along the slots. */
  long greatestLow() {
    return greatestLow;
  }

  /**
   * The low and the high end of each anchor across the slots, in the order of the mount; must not
   * be modified.
   */
  long[] across() {
    return across;
  }
}
