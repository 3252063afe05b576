package org.jawroom.geometry;

import java.math.BigInteger;

/**
 * An exact fraction, for the few bounds that need not fall on a whole half-nanometre. Not reduced.
 *
 * @param denominator above 0
 */
public record Fraction(long numerator, long denominator) implements Comparable<Fraction> {

  public static final Fraction ZERO = new Fraction(0, 1);
  public static final Fraction ONE = new Fraction(1, 1);

  public Fraction {
    if (denominator <= 0) {
      throw new ArithmeticException("denominator is not positive: " + denominator);
    }
  }

  /**
   * The quotient of two whole numbers.
   *
   * @throws ArithmeticException if {@code denominator} is 0
   */
  public static Fraction of(long numerator, long denominator) {
    return denominator < 0
        ? new Fraction(Math.negateExact(numerator), Math.negateExact(denominator))
        : new Fraction(numerator, denominator);
  }

  /** ⌊{@code factor} · this⌋. */
  public long floorTimes(long factor) {
    return Length.floorOfProduct(numerator, factor, denominator);
  }

  /** ⌈{@code factor} · this⌉. */
  public long ceilTimes(long factor) {
    return -Length.floorOfProduct(numerator, -factor, denominator);
  }

  /**
   * Compares by value: 1/2 and 2/4 compare as equal, although {@code equals} distinguishes them.
   */
  @Override
  public int compareTo(Fraction other) {
    if (denominator == other.denominator) {
      return Long.compare(numerator, other.numerator);
    }
    return compareProducts(numerator, other.denominator, other.numerator, denominator);
  }

  /** The sign of (a − b) − (c − d), exact. */
  public static int compareDifferences(Fraction a, Fraction b, Fraction c, Fraction d) {
    double apart = (a.about() - b.about()) - (c.about() - d.about());
    double sizes =
        Math.abs(a.about()) + Math.abs(b.about()) + Math.abs(c.about()) + Math.abs(d.about());
    // Rounding error of the double estimate: two conversions and one division put each of the four
    // values within 3 ulp/2, and three differences add less than 3 ulp of the sum of sizes. 2⁻⁴⁸ of
    // that sum bounds the total generously; closer cases are decided exactly.
    if (Math.abs(apart) > sizes * 0x1p-48) {
      return apart > 0 ? 1 : -1;
    }
    BigInteger one =
        a.big().multiply(b.bigDenominator()).subtract(b.big().multiply(a.bigDenominator()));
    BigInteger other =
        c.big().multiply(d.bigDenominator()).subtract(d.big().multiply(c.bigDenominator()));
    return one.multiply(c.bigDenominator())
        .multiply(d.bigDenominator())
        .compareTo(other.multiply(a.bigDenominator()).multiply(b.bigDenominator()));
  }

  private double about() {
    return (double) numerator / denominator;
  }

  private BigInteger big() {
    return BigInteger.valueOf(numerator);
  }

  private BigInteger bigDenominator() {
    return BigInteger.valueOf(denominator);
  }

  /** Compares a·b with c·d; both products may exceed a long. */
  private static int compareProducts(long a, long b, long c, long d) {
    int high = Long.compare(Math.multiplyHigh(a, b), Math.multiplyHigh(c, d));
    return high != 0 ? high : Long.compareUnsigned(a * b, c * d);
  }

  public static Fraction min(Fraction one, Fraction other) {
    return one.compareTo(other) <= 0 ? one : other;
  }

  public static Fraction max(Fraction one, Fraction other) {
    return one.compareTo(other) >= 0 ? one : other;
  }
}
