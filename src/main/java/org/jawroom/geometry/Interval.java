package org.jawroom.geometry;

import java.util.Optional;

/**
 * The closed interval from {@code lo} to {@code hi}, in half-nanometres; a single point at least.
 */
public record Interval(long lo, long hi) {

  /** The whole line. */
  public static final Interval ALL = new Interval(-Length.ENDLESS, Length.ENDLESS);

  public Interval {
    if (lo > hi) {
      throw new IllegalArgumentException("interval from " + lo + " to " + hi + " runs backwards");
    }
  }

  public static Interval of(long lo, long hi) {
    return new Interval(lo, hi);
  }

  /** {@code middle} ± {@code half}. */
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

  /** Swept along {@code shifts}: the Minkowski sum of the two. */
  public Interval sweptBy(Interval shifts) {
    return new Interval(lo + shifts.lo, hi + shifts.hi);
  }

  /** Grown by {@code below} at the low end and {@code above} at the high one. */
  public Interval grown(long below, long above) {
    return new Interval(lo - below, hi + above);
  }

  /** The smallest interval that holds both. */
  public Interval hull(Interval other) {
    return new Interval(Math.min(lo, other.lo), Math.max(hi, other.hi));
  }

  /** Both ends count as inside. */
  public boolean contains(long point) {
    return lo <= point && point <= hi;
  }

  /** Whether the two have a point in common; touching counts. */
  public boolean meets(Interval other) {
    return lo <= other.hi && other.lo <= hi;
  }

  /** What the two have in common; empty only if they do not {@link #meets meet}. */
  public Optional<Interval> meet(Interval other) {
    return meets(other)
        ? Optional.of(new Interval(Math.max(lo, other.lo), Math.min(hi, other.hi)))
        : Optional.empty();
  }

  /**
   * The signed distance between the two: max(other.lo − hi, lo − other.hi). Positive when a free
   * gap of that width lies between them, 0 when they touch, negative when they overlap.
   */
  public long gapTo(Interval other) {
    return Math.max(other.lo - hi, lo - other.hi);
  }
}
