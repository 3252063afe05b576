package org.jawroom.reference.space;

import java.math.BigInteger;

/** An exact rational number of half-nanometres; the denominator is positive. */
public record Ratio(BigInteger num, BigInteger den) implements Comparable<Ratio> {

  public static Ratio of(long whole) {
    return new Ratio(BigInteger.valueOf(whole), BigInteger.ONE);
  }

  public static Ratio of(BigInteger num, BigInteger den) {
    BigInteger g = num.gcd(den);
    if (den.signum() < 0) {
      g = g.negate();
    }
    return new Ratio(num.divide(g), den.divide(g));
  }

  public Ratio minus(Ratio other) {
    return of(num.multiply(other.den).subtract(other.num.multiply(den)), den.multiply(other.den));
  }

  public long floor() {
    BigInteger[] qr = num.divideAndRemainder(den);
    return qr[0].longValueExact() - (qr[1].signum() < 0 ? 1 : 0);
  }

  public long ceil() {
    return -new Ratio(num.negate(), den).floor();
  }

  @Override
  public int compareTo(Ratio other) {
    return num.multiply(other.den).compareTo(other.num.multiply(den));
  }

  @Override
  public String toString() {
    return num + (den.equals(BigInteger.ONE) ? "" : "/" + den);
  }
}
