package org.jawroom.drawing;

import org.jawroom.geometry.Box;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Length;

/** Where a guard stands when it comes nearest to something, out of all that it sweeps. */
final class NearestStance {
  private NearestStance() {}

  /**
   * @param own the guard's own limits, wherever along its sweep they are told
   * @param swept all that it sweeps
   * @param to what it comes near to
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
      // Without end on a side it is as near as it ever comes wherever the other side stands
      // foremost.
      return swept;
    }
    long length = own.length();
    long centred = (to.lo() + to.hi()) / 2 - length / 2;
    long lo = Math.max(swept.lo(), Math.min(swept.hi() - length, centred));
    return Interval.of(lo, lo + length);
  }
}
