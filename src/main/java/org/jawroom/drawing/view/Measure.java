package org.jawroom.drawing.view;

import org.jawroom.clearance.gap.Limit;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Box;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Length;

/**
 * The limiting clearance, or the overlap, as a dimension between two faces along an axis.
 *
 * @param from the lower of the two faces
 * @param to the higher
 * @param overlap whether the two faces overlap
 */
public record Measure(Axis axis, long from, long to, boolean overlap, Limit limit) {

  static Measure of(Limit limit) {
    Interval part = limit.partBox().along(limit.axis());
    Interval guard = limit.guardBox().along(limit.axis());
    boolean guardAbove = guard.lo() - part.hi() >= part.lo() - guard.hi();
    long one = guardAbove ? part.hi() : part.lo();
    long other = guardAbove ? guard.lo() : guard.hi();
    return new Measure(
        limit.axis(), Math.min(one, other), Math.max(one, other), limit.gap() < 0, limit);
  }

  /** A position along another axis where the two stand side by side, or closest to that. */
  public long beside(Axis other) {
    Interval part = limit.partBox().along(other);
    Interval guard = limit.guardBox().along(other);
    long lo = Math.max(part.lo(), guard.lo());
    long hi = Math.min(part.hi(), guard.hi());
    if (!Length.isBounded(lo)) {
      lo = part.lo();
    }
    if (!Length.isBounded(hi)) {
      hi = part.hi();
    }
    return lo + (hi - lo) / 2;
  }

  /** The intersection of the two; defined only if they overlap. */
  Box claimed() {
    Box part = limit.partBox();
    Box guard = limit.guardBox();
    return new Box(
        part.x().meet(guard.x()).orElseThrow(),
        part.y().meet(guard.y()).orElseThrow(),
        part.z().meet(guard.z()).orElseThrow());
  }
}
