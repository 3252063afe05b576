package org.jawroom.geometry;

import java.util.Optional;

/**
 * The closed interval [{@code lo}, {@code hi}] in half-nanometres; never empty, possibly a point.
 */
public record Interval(long lo, long hi) {

  /** The whole real line, up to {@link Length#ENDLESS}. */
  public static final Interval ALL = new Interval(-Length.ENDLESS, Length.ENDLESS);

  public Interval {
    if (lo > hi) {
      throw new IllegalArgumentException("interval with lo " + lo + " above hi " + hi);
    }
  }

  public static Interval of(long lo, long hi) {
    return new Interval(lo, hi);
  }

  /** [{@code middle} − {@code half}, {@code middle} + {@code half}]. */
  public static Interval around(long middle, long half) {
    return new Interval(middle - half, middle + half);
  }

  public long length() {
    return hi - lo;
  }

  public Interval plus(long shift) {
    return new Interval(lo + shift, hi + shift);
  }

  public Interval negated() {
    return new Interval(-hi, -lo);
  }

  /** The sweep of this interval over {@code shifts}: their Minkowski sum. */
  public Interval sweptBy(Interval shifts) {
    return new Interval(lo + shifts.lo, hi + shifts.hi);
  }

  /** Extended by {@code below} at the low end and by {@code above} at the high end. */
  public Interval grown(long below, long above) {
    return new Interval(lo - below, hi + above);
  }

  /** The smallest interval that contains both. */
  public Interval hull(Interval other) {
    return new Interval(Math.min(lo, other.lo), Math.max(hi, other.hi));
  }

  /** Whether this closed interval contains the point. */
  public boolean contains(long point) {
    return lo <= point && point <= hi;
  }

  /** Its point nearest to another. */
  public long nearest(long point) {
    return Math.max(lo, Math.min(hi, point));
  }

  /** Whether the closed intervals intersect; touching counts. */
  public boolean meets(Interval other) {
    return lo <= other.hi && other.lo <= hi;
  }

  /** The intersection; empty only if they do not {@link #meets meet}. */
  public Optional<Interval> meet(Interval other) {
    return meets(other)
        ? Optional.of(new Interval(Math.max(lo, other.lo), Math.min(hi, other.hi)))
        : Optional.empty();
  }

  /**
   * The signed distance max(other.lo − hi, lo − other.hi): positive for a free gap of that width, 0
   * if the two touch, negative if they overlap.
   */
  public long gapTo(Interval other) {
    return Math.max(other.lo - hi, lo - other.hi);
  }
}
