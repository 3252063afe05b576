package org.jawroom.geometry;

import java.math.BigInteger;

/** The unit of length: whole half-nanometres in a {@code long}. */
public final class Length {

  /** Half-nanometres per nanometre; inputs are rounded to whole nanometres. */
  public static final long NANOMETRE = 2;

  /** Half-nanometres per millimetre. */
  public static final long MM = 1_000_000 * NANOMETRE;

  /** Half-nanometres per inch: 25.4 mm exactly. */
  public static final long INCH = 25_400_000 * NANOMETRE;

  /** The largest length a table may contain: 100 m. */
  public static final long LARGEST = 100_000 * MM;

  /**
   * Stands for an unbounded limit. It exceeds any sum of lengths that a shop can produce, and
   * leaves room to add a few of them without overflowing a {@code long}.
   */
  public static final long ENDLESS = 1L << 60;

  private Length() {}

  /** Whether a limit is finite rather than ±{@link #ENDLESS} plus some length. */
  public static boolean isBounded(long limit) {
    return -ENDLESS / 2 < limit && limit < ENDLESS / 2;
  }

  /** {@code length} rounded down to a whole multiple of {@code grain} (&gt; 0). */
  public static long floorTo(long length, long grain) {
    return Math.floorDiv(length, grain) * grain;
  }

  /** {@code length} rounded up to a whole multiple of {@code grain} (&gt; 0). */
  public static long ceilTo(long length, long grain) {
    return -floorTo(-length, grain);
  }

  /** ⌊a·b/{@code divisor}⌋ for a divisor above 0; the product may exceed a long. */
  static long floorOfProduct(long a, long b, long divisor) {
    if (Math.multiplyHigh(a, b) == (a * b) >> 63) {
      return Math.floorDiv(a * b, divisor);
    }
    BigInteger[] parts =
        BigInteger.valueOf(a)
            .multiply(BigInteger.valueOf(b))
            .divideAndRemainder(BigInteger.valueOf(divisor));
    long quotient = parts[0].longValueExact();
    return parts[1].signum() < 0 ? quotient - 1 : quotient;
  }
}
