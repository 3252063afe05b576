package org.jawroom.placement.bolting;

import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Orientation;

/**
 * A place of a vise where something reaches down into a slot: the middle of a bolt's hole or of a
 * strap clamp. Half-nanometres, in the vise frame.
 *
 * @param u its middle, {@code v} likewise
 * @param playU how far from its middle the nut may stand along u, {@code playV} along v
 */
record Anchor(long u, long v, long playU, long playV) {

  /** The anchor of a vise in one orientation, along and across the slots. */
  Turned turned(Orientation turn, Axis slots) {
    long x = turn.x(u, v);
    long y = turn.y(u, v);
    boolean alongU = turn.uAxis() == slots;
    return new Turned(
        slots == Axis.X ? x : y,
        slots == Axis.X ? y : x,
        alongU ? playU : playV,
        alongU ? playV : playU);
  }

  /** See {@link #turned}. */
  record Turned(long along, long across, long playAlong, long playAcross) {

    /**
     * The positions of the vise across the slots at which it stands over the slot at {@code at}.
     */
    Interval acrossIn(long at) {
      return Interval.around(at - across, playAcross);
    }
  }
}
