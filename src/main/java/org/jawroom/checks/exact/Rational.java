package org.jawroom.checks.exact;

import java.math.BigInteger;

/**
 * An exact rational number of any size, reduced.
 *
 * @param denominator above 0
 */
public record Rational(BigInteger numerator, BigInteger denominator)
    implements Comparable<Rational> {
  public static final Rational ZERO = of(0);
  public static final Rational ONE = of(1);

  public Rational {
    if (denominator.signum() == 0) {
      throw new ArithmeticException("division by zero");
    }
    BigInteger common = numerator.gcd(denominator);
    if (denominator.signum() < 0) {
      common = common.negate();
    }
    numerator = numerator.divide(common);
    denominator = denominator.divide(common);
  }

  public static Rational of(long whole) {
    return new Rational(BigInteger.valueOf(whole), BigInteger.ONE);
  }

  public static Rational of(long numerator, long denominator) {
    return new Rational(BigInteger.valueOf(numerator), BigInteger.valueOf(denominator));
  }

  public Rational plus(Rational other) {
    return new Rational(
        numerator.multiply(other.denominator).add(other.numerator.multiply(denominator)),
        denominator.multiply(other.denominator));
  }

  public Rational minus(Rational other) {
    return plus(other.negated());
  }

  public Rational times(Rational other) {
    return new Rational(
        numerator.multiply(other.numerator), denominator.multiply(other.denominator));
  }

  /**
   * The quotient.
   *
   * @throws ArithmeticException if {@code other} is 0
   */
  public Rational over(Rational other) {
    return new Rational(
        numerator.multiply(other.denominator), denominator.multiply(other.numerator));
  }

  public Rational negated() {
    return new Rational(numerator.negate(), denominator);
  }

  public int signum() {
    return numerator.signum();
  }

  public static Rational min(Rational one, Rational other) {
    return one.compareTo(other) <= 0 ? one : other;
  }

  public static Rational max(Rational one, Rational other) {
    return one.compareTo(other) >= 0 ? one : other;
  }

  /**
   * The greatest whole number that is not above.
   *
   * @throws ArithmeticException if it exceeds a long
   */
  public long floor() {
    BigInteger[] parts = numerator.divideAndRemainder(denominator);
    long quotient = parts[0].longValueExact();
    return parts[1].signum() < 0 ? quotient - 1 : quotient;
  }

  /** The least whole number that is not below; see {@link #floor}. */
  public long ceiling() {
    return -negated().floor();
  }

  @Override
  public int compareTo(Rational other) {
    return numerator.multiply(other.denominator).compareTo(other.numerator.multiply(denominator));
  }
}
