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

  /** Where it may stand along the slots, of a vise in one orientation. */
  Ends along(Orientation turn, Axis slots) {
    return turn.uAxis() == slots ? pointing(u, turn.uSign()) : pointing(v, turn.vSign());
  }

  /** The same across the slots. */
  Ends across(Orientation turn, Axis slots) {
    return turn.uAxis() == slots ? pointing(v, turn.vSign()) : pointing(u, turn.uSign());
  }

  private static Ends pointing(Ends ends, int sign) {
    return sign > 0 ? ends : new Ends(-ends.hi(), -ends.lo());
  }
}
