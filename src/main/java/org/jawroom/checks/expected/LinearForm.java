package org.jawroom.checks.expected;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import org.jawroom.checks.exact.Rational;

/**
 * A sum of quantities with fixed factors, plus a constant in half-nanometres. No factor is 0.
 *
 * @param terms in the order in which they were added
 */
public record LinearForm(Map<Unknown, Rational> terms, Rational constant) {
  public static final LinearForm ZERO = constant(0);

  public LinearForm {
    Objects.requireNonNull(constant);
    terms = Collections.unmodifiableMap(new LinkedHashMap<>(terms));
    if (terms.values().stream().anyMatch(factor -> factor.signum() == 0)) {
      throw new IllegalArgumentException("a term of factor 0");
    }
  }

  public static LinearForm constant(long halfNanometres) {
    return new LinearForm(Map.of(), Rational.of(halfNanometres));
  }

  public static LinearForm of(Unknown unknown) {
    return new LinearForm(Map.of(unknown, Rational.ONE), Rational.ZERO);
  }

  public LinearForm plus(LinearForm other) {
    Map<Unknown, Rational> sum = new LinkedHashMap<>(terms);
    other.terms.forEach((unknown, factor) -> sum.merge(unknown, factor, Rational::plus));
    sum.values().removeIf(factor -> factor.signum() == 0);
    return new LinearForm(sum, constant.plus(other.constant));
  }

  public LinearForm minus(LinearForm other) {
    return plus(other.times(Rational.of(-1)));
  }

  public LinearForm times(Rational factor) {
    if (factor.signum() == 0) {
      return ZERO;
    }
    Map<Unknown, Rational> scaled = new LinkedHashMap<>();
    terms.forEach((unknown, own) -> scaled.put(unknown, own.times(factor)));
    return new LinearForm(scaled, constant.times(factor));
  }

  public LinearForm half() {
    return times(Rational.of(1, 2));
  }

  public LinearForm negated() {
    return times(Rational.of(-1));
  }
}
