package org.jawroom.geometry;

import java.math.BigInteger;

/** An exact fraction, for the few places where a bound need not fall on a whole half-nanometre. */
public record Fraction(BigInteger numerator, BigInteger denominator)
    implements Comparable<Fraction> {

  public static final Fraction ZERO = of(0, 1);
  public static final Fraction ONE = of(1, 1);

  public Fraction {
    if (denominator.signum() == 0) {
      throw new ArithmeticException("fraction with denominator 0");
    }
    if (denominator.signum() < 0) {
      numerator = numerator.negate();
      denominator = denominator.negate();
    }
  }

  public static Fraction of(long numerator, long denominator) {
    return new Fraction(BigInteger.valueOf(numerator), BigInteger.valueOf(denominator));
  }

  public static Fraction whole(long value) {
    return of(value, 1);
  }

  public Fraction minus(Fraction other) {
    if (denominator.equals(other.denominator)) {
      return new Fraction(numerator.subtract(other.numerator), denominator);
    }
    return new Fraction(
        numerator.multiply(other.denominator).subtract(other.numerator.multiply(denominator)),
        denominator.multiply(other.denominator));
  }

  public Fraction times(long factor) {
    return new Fraction(numerator.multiply(BigInteger.valueOf(factor)), denominator);
  }

  public Fraction dividedBy(long divisor) {
    return new Fraction(numerator, denominator.multiply(BigInteger.valueOf(divisor)));
  }

  public long floor() {
    BigInteger[] parts = numerator.divideAndRemainder(denominator);
    return parts[0].longValueExact() - (parts[1].signum() < 0 ? 1 : 0);
  }

  public long ceil() {
    BigInteger[] parts = numerator.divideAndRemainder(denominator);
    return parts[0].longValueExact() + (parts[1].signum() > 0 ? 1 : 0);
  }

  /** By value; 1/2 and 2/4 compare as equal, though {@code equals} tells them apart. */
  @Override
  public int compareTo(Fraction other) {
    return numerator.multiply(other.denominator).compareTo(other.numerator.multiply(denominator));
  }

  public static Fraction min(Fraction one, Fraction other) {
    return one.compareTo(other) <= 0 ? one : other;
  }

  public static Fraction max(Fraction one, Fraction other) {
    return one.compareTo(other) >= 0 ? one : other;
  }
}
