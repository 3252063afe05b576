package org.jawroom.geometry;

/**
 * An interval whose ends are linear functions of a vise's opening: {@code closed} at the least
 * opening of {@code range}, {@code open} at the greatest. If the range is a single opening, both
 * are replaced by their hull. Its ends may be reversed at some openings, where it is empty.
 */
public record OpeningInterval(Ends closed, Ends open, Interval range) {

  public OpeningInterval {
    if (range.lo() == range.hi()) {
      closed = new Ends(Math.min(closed.lo(), open.lo()), Math.max(closed.hi(), open.hi()));
      open = closed;
    }
  }

  public OpeningInterval(Interval closed, Interval open, Interval range) {
    this(Ends.of(closed), Ends.of(open), range);
  }

  /** An interval that does not depend on the opening. */
  public static OpeningInterval constant(Interval interval, Interval range) {
    return new OpeningInterval(interval, interval, range);
  }

  /** A copy with both ends farther out by {@code by} at every opening. */
  public OpeningInterval grown(long by) {
    return new OpeningInterval(closed.grown(by), open.grown(by), range);
  }

  public boolean isConstant() {
    return closed.equals(open);
  }

  /**
   * The low end at opening {@code s} of the range, rounded down to a whole half-nanometre.
   *
   * @throws IllegalArgumentException if {@code s} is outside the range
   */
  public long lo(long s) {
    return closed.lo() + share(open.lo() - closed.lo(), s, false);
  }

  /**
   * The high end at opening {@code s} of the range, rounded up to a whole half-nanometre.
   *
   * @throws IllegalArgumentException if {@code s} is outside the range
   */
  public long hi(long s) {
    return closed.hi() + share(open.hi() - closed.hi(), s, true);
  }

  /**
   * The sweep over {@code openings}: the hull at both ends, exact because the limits are linear.
   *
   * @throws IllegalArgumentException if it is empty, see {@link #isEmpty}
   */
  public Interval over(Interval openings) {
    Ends swept = swept(openings);
    return new Interval(swept.lo(), swept.hi());
  }

  /** Whether the ends of its sweep over {@code openings} are reversed. */
  public boolean isEmpty(Interval openings) {
    return swept(openings).isReversed();
  }

  private Ends swept(Interval openings) {
    if (openings.lo() == range.lo() && openings.hi() == range.hi()) {
      return new Ends(Math.min(closed.lo(), open.lo()), Math.max(closed.hi(), open.hi()));
    }
    return new Ends(
        Math.min(lo(openings.lo()), lo(openings.hi())),
        Math.max(hi(openings.lo()), hi(openings.hi())));
  }

  /** {@code change}·(s − range.lo)/range.length, rounded in the given direction. */
  private long share(long change, long s, boolean up) {
    if (!range.contains(s)) {
      throw new IllegalArgumentException("opening " + s + " outside " + range);
    }
    if (change == 0 || s == range.lo()) {
      return 0;
    }
    if (s == range.hi()) {
      return change;
    }
    return up
        ? -Length.floorOfProduct(-change, s - range.lo(), range.length())
        : Length.floorOfProduct(change, s - range.lo(), range.length());
  }
}
