package org.jawroom.checks.expected;

import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jawroom.checks.exact.Rational;
import org.jawroom.checks.exact.ValueRange;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Length;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.value.Measurand;

/** The quantities met so far, each with the values that the tables allow. */
public final class Terms {
  private final Map<Unknown, ValueRange> values = new LinkedHashMap<>();
  private final Map<Unknown, ValueRange> possible = new HashMap<>();

  /** A reading of 0 or more, as written. */
  public LinearForm known(Measurand measurand, long length) {
    return reading(measurand, Dimension.of(length));
  }

  /** A reading that may be negative, as written. */
  public LinearForm placed(Measurand measurand, long length) {
    return position(measurand, Dimension.of(length));
  }

  /** A reading of 0 or more; {@code none} counts as 0. */
  LinearForm reading(Measurand measurand, Dimension dimension) {
    return reading(measurand, dimension, 0);
  }

  /** A reading that may be negative. */
  LinearForm position(Measurand measurand, Dimension dimension) {
    return reading(measurand, dimension, -Length.ENDLESS);
  }

  private LinearForm reading(Measurand measurand, Dimension dimension, long least) {
    if (dimension.isNone()) {
      return LinearForm.ZERO;
    }
    Unknown reading = new Unknown.ReadingValue(measurand);
    possible.putIfAbsent(reading, ValueRange.of(Interval.of(least, Length.ENDLESS)));
    return bounded(reading, ValueRange.of(dimension.values(least)));
  }

  /** The error of an end or a face. */
  public LinearForm error(Unknown unknown, long tolerance) {
    return bounded(unknown, ValueRange.around(tolerance));
  }

  private LinearForm bounded(Unknown unknown, ValueRange bounds) {
    values.putIfAbsent(unknown, bounds);
    return LinearForm.of(unknown);
  }

  /** What the tables allow a quantity to be. */
  public ValueRange of(Unknown unknown) {
    return values.get(unknown);
  }

  /** What a reading may be if it is written wrong: nothing that no table could say. */
  public ValueRange possible(Unknown reading) {
    return possible.get(reading);
  }

  /** Every quantity, in the order met. */
  public Map<Unknown, ValueRange> all() {
    return Collections.unmodifiableMap(values);
  }

  /** Every value that a sum may have. */
  public ValueRange range(LinearForm form) {
    ValueRange sum = ValueRange.at(form.constant());
    for (Map.Entry<Unknown, Rational> term : form.terms().entrySet()) {
      sum = sum.plus(of(term.getKey()).times(term.getValue()));
    }
    return sum;
  }

  /** A value of a sum: each reading as written, an open one at its least, every error 0. */
  public Rational nominal(LinearForm form) {
    Rational sum = form.constant();
    for (Map.Entry<Unknown, Rational> term : form.terms().entrySet()) {
      if (term.getKey() instanceof Unknown.ReadingValue) {
        ValueRange bounds = of(term.getKey());
        sum = sum.plus(term.getValue().times(bounds.lo().or(bounds::hi).orElse(Rational.ZERO)));
      }
    }
    return sum;
  }
}
