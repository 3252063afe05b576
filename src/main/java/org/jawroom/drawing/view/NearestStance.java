package org.jawroom.drawing.view;

import org.jawroom.geometry.Box;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Length;

/** The position of a guard, within its sweep, at which it comes nearest to a box. */
final class NearestStance {
  private NearestStance() {}

  /**
   * @param own the guard's own box, at any position of its sweep
   * @param swept the whole sweep
   * @param to the box it comes near to
   */
  static Box of(Box own, Box swept, Box to) {
    return new Box(
        along(own.x(), swept.x(), to.x()),
        along(own.y(), swept.y(), to.y()),
        along(own.z(), swept.z(), to.z()));
  }

  private static Interval along(Interval own, Interval swept, Interval to) {
    if (!Length.isBounded(own.lo())
        || !Length.isBounded(own.hi())
        || !Length.isBounded(swept.lo())
        || !Length.isBounded(swept.hi())) {
      // Unbounded on one side, the guard is nearest with its other side foremost: there the sweep
      // ends.
      return swept;
    }
    long length = own.length();
    long centred = (to.lo() + to.hi()) / 2 - length / 2;
    long lo = Math.max(swept.lo(), Math.min(swept.hi() - length, centred));
    return Interval.of(lo, lo + length);
  }
}
