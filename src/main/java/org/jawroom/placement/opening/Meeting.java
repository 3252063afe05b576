package org.jawroom.placement.opening;

import java.math.BigInteger;
import java.util.OptionalLong;
import org.jawroom.clearance.obstacle.OpeningBounds.Bound;

/** The intersection of two bounds on the opening: the p at which (c₁ − p)/Δ₁ = (c₂ − p)/Δ₂. */
final class Meeting {
  /**
   * If two factors have at most this many binary digits together, their product is below 2⁶², and
   * the difference of two such products fits a long.
   */
  private static final int DIGITS = Long.SIZE - 2;

  private Meeting() {}

  /**
   * ⌊p⌋ of the intersection, exact.
   *
   * @param one a bound whose slope differs from that of {@code other}
   * @return empty if the value does not fit a long
   */
  static OptionalLong floor(Bound one, Bound other) {
    long apart = other.delta() - one.delta();
    if (fits(one.c(), other.delta()) && fits(other.c(), one.delta())) {
      long difference = one.c() * other.delta() - other.c() * one.delta();
      return OptionalLong.of(Math.floorDiv(difference, apart));
    }
    BigInteger floor = floor(product(one, other).subtract(product(other, one)), apart);
    return floor.bitLength() < Long.SIZE
        ? OptionalLong.of(floor.longValueExact())
        : OptionalLong.empty();
  }

  private static boolean fits(long one, long other) {
    return digits(one) + digits(other) <= DIGITS;
  }

  private static int digits(long number) {
    return Long.SIZE - Long.numberOfLeadingZeros(Math.abs(number));
  }

  private static BigInteger product(Bound one, Bound other) {
    return BigInteger.valueOf(one.c()).multiply(BigInteger.valueOf(other.delta()));
  }

  private static BigInteger floor(BigInteger dividend, long divisor) {
    BigInteger[] parts = dividend.divideAndRemainder(BigInteger.valueOf(divisor));
    // The quotient is rounded toward 0, so it is 1 too high where the remainder has the other sign.
    boolean isUp = parts[1].signum() * Long.signum(divisor) < 0;
    return isUp ? parts[0].subtract(BigInteger.ONE) : parts[0];
  }
}
