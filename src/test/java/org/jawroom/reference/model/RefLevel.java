package org.jawroom.reference.model;

import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Length;
import org.jawroom.reference.space.Span;
import org.jawroom.shop.value.Dimension;

/** What open readings are taken as: every value at once, or what all values share. */
public enum RefLevel {
  WORST,
  BEST;

  /** Every value of a reading that is not {@code none}; {@code least} for a blank. */
  public static Span values(Dimension dimension, long least) {
    Interval values = dimension.values(least);
    return new Span(values.lo(), values.hi());
  }

  /** Every value of a reading that may be negative. */
  static Span signed(Dimension dimension) {
    return values(dimension, -Length.ENDLESS);
  }

  /** The box between two ends, each given with all its values; empty if these share nothing. */
  Span box(Span low, Span high) {
    return this == WORST ? new Span(low.lo(), high.hi()) : new Span(low.hi(), high.lo());
  }

  /**
   * Where something that lies anywhere in {@code at} may move by {@code play} either way: for each
   * place at worst, for some place at best.
   */
  Span room(Span at, long play) {
    return this == WORST
        ? new Span(at.hi() - play, at.lo() + play)
        : new Span(at.lo() - play, at.hi() + play);
  }

  /** What lies {@code by} inside both ends: for each value at worst, for some value at best. */
  Span inside(Span low, Span high, long by) {
    return this == WORST
        ? new Span(low.hi() + by, high.lo() - by)
        : new Span(low.lo() + by, high.hi() - by);
  }
}
