package org.jawroom.reference;

import java.math.BigInteger;

/** An exact rational number of half-nanometres; the denominator is positive. */
public record Fraction(BigInteger num, BigInteger den) implements Comparable<Fraction> {

  public static Fraction of(long whole) {
    return new Fraction(BigInteger.valueOf(whole), BigInteger.ONE);
  }

  public static Fraction of(BigInteger num, BigInteger den) {
    BigInteger g = num.gcd(den);
    if (den.signum() < 0) {
      g = g.negate();
    }
    return new Fraction(num.divide(g), den.divide(g));
  }

  public Fraction minus(Fraction other) {
    return of(num.multiply(other.den).subtract(other.num.multiply(den)), den.multiply(other.den));
  }

  public long floor() {
    BigInteger[] qr = num.divideAndRemainder(den);
    return qr[0].longValueExact() - (qr[1].signum() < 0 ? 1 : 0);
  }

  public long ceil() {
    return -new Fraction(num.negate(), den).floor();
  }

  @Override
  public int compareTo(Fraction other) {
    return num.multiply(other.den).compareTo(other.num.multiply(den));
  }

  @Override
  public String toString() {
    return num + (den.equals(BigInteger.ONE) ? "" : "/" + den);
  }
}
