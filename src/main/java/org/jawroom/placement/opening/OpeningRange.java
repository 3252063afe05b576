package org.jawroom.placement.opening;

import org.jawroom.geometry.Fraction;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Length;

/**
 * A closed part of an opening range, with its ends as shares of that range: 0 is the least opening,
 * 1 the greatest. A negative width means no opening at all.
 */
public record OpeningRange(Fraction from, Fraction to) {

  public static final OpeningRange EMPTY = new OpeningRange(Fraction.ONE, Fraction.ZERO);

  /** Whether this is wider than {@code other}, or equally wide with a lower start. */
  boolean betterThan(OpeningRange other) {
    int wider = Fraction.compareDifferences(to, from, other.to, other.from);
    return wider > 0 || wider == 0 && from.compareTo(other.from) < 0;
  }

  /** Whether it is at least {@code least} wide, as a share of {@code full}. */
  public boolean isAtLeast(long least, Interval full) {
    return Fraction.compareDifferences(to, from, Fraction.of(least, full.length()), Fraction.ZERO)
        >= 0;
  }

  /**
   * The range as printed: the start rounded up and the end down to {@code grain}, except where an
   * end is that of {@code full} itself.
   */
  public Interval printed(Interval full, long grain) {
    long lo =
        from.compareTo(Fraction.ZERO) == 0
            ? full.lo()
            : Length.ceilTo(full.lo() + from.ceilTimes(full.length()), grain);
    long hi =
        to.compareTo(Fraction.ONE) == 0
            ? full.hi()
            : Length.floorTo(full.lo() + to.floorTimes(full.length()), grain);
    return Interval.of(lo, hi);
  }
}
