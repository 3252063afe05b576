package org.jawroom.geometry;

/**
 * Two ends of which the low one may lie above the high one, unlike those of an {@link Interval}:
 * what all values of an uncertain interval have in common may be nothing.
 */
public record Ends(long lo, long hi) {

  public static Ends of(Interval interval) {
    return new Ends(interval.lo(), interval.hi());
  }

  /** Both ends farther out. */
  public Ends grown(long by) {
    return new Ends(lo - by, hi + by);
  }

  public boolean isReversed() {
    return lo > hi;
  }
}
