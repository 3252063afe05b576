package org.jawroom.checks.exact;

import java.util.Optional;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Length;

/**
 * A closed interval of exact values; an end may be missing.
 *
 * @param lo empty: no least value; {@code hi} likewise
 */
public record ValueRange(Optional<Rational> lo, Optional<Rational> hi) {
  public static final ValueRange ALL = new ValueRange(Optional.empty(), Optional.empty());
  public static final ValueRange ZERO = around(0);

  public ValueRange {
    if (lo.isPresent() && hi.isPresent() && lo.get().compareTo(hi.get()) > 0) {
      throw new IllegalArgumentException("bounds from " + lo.get() + " to " + hi.get());
    }
  }

  /** From −{@code length} to {@code length}. */
  public static ValueRange around(long length) {
    return new ValueRange(Optional.of(Rational.of(-length)), Optional.of(Rational.of(length)));
  }

  /** The values of an interval of half-nanometres; {@link Length#ENDLESS} is no end. */
  public static ValueRange of(Interval values) {
    return new ValueRange(end(values.lo()), end(values.hi()));
  }

  private static Optional<Rational> end(long end) {
    return Length.isBounded(end) ? Optional.of(Rational.of(end)) : Optional.empty();
  }

  /** A single value. */
  public static ValueRange at(Rational value) {
    return new ValueRange(Optional.of(value), Optional.of(value));
  }

  public ValueRange plus(ValueRange other) {
    return new ValueRange(sum(lo, other.lo), sum(hi, other.hi));
  }

  public ValueRange times(Rational factor) {
    Optional<Rational> one = lo.map(factor::times);
    Optional<Rational> other = hi.map(factor::times);
    return factor.signum() >= 0 ? new ValueRange(one, other) : new ValueRange(other, one);
  }

  /** Whether {@code value} lies within, ends included. */
  public boolean contains(Rational value) {
    return lo.filter(end -> end.compareTo(value) > 0).isEmpty()
        && hi.filter(end -> end.compareTo(value) < 0).isEmpty();
  }

  /** Whether the two have no value in common; touching is in common. */
  public boolean isApartFrom(ValueRange other) {
    return isBelow(hi, other.lo) || isBelow(other.hi, lo);
  }

  /** Whether it holds exactly one value. */
  public boolean isSingle() {
    return lo.isPresent() && lo.equals(hi);
  }

  private static boolean isBelow(Optional<Rational> high, Optional<Rational> low) {
    return high.isPresent() && low.isPresent() && high.get().compareTo(low.get()) < 0;
  }

  private static Optional<Rational> sum(Optional<Rational> one, Optional<Rational> other) {
    return one.flatMap(value -> other.map(value::plus));
  }
}
