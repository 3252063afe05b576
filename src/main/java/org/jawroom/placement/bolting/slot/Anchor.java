package org.jawroom.placement.bolting.slot;

import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Ends;
import org.jawroom.geometry.Orientation;

/**
 * Where something of a vise reaches down into a slot, a bolt in its hole or the stud of a strap
 * clamp: the middle of its nut may stand anywhere in a rectangle of the vise frame,
 * half-nanometres. The ends of a side are reversed if open readings leave no such place for all of
 * their values.
 */
public record Anchor(Ends u, Ends v) {

  /** The rectangle of a vise in one orientation, along and across the slots. */
  Turned turned(Orientation turn, Axis slots) {
    Ends turnedU = turn.uSign() > 0 ? u : new Ends(-u.hi(), -u.lo());
    Ends turnedV = turn.vSign() > 0 ? v : new Ends(-v.hi(), -v.lo());
    return turn.uAxis() == slots ? new Turned(turnedU, turnedV) : new Turned(turnedV, turnedU);
  }

  /** See {@link #turned}. */
  record Turned(Ends along, Ends across) {}
}
