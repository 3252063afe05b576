package org.jawroom.placement.opening;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.OptionalLong;
import java.util.Random;
import org.jawroom.clearance.obstacle.OpeningBounds.Bound;
import org.junit.jupiter.api.Test;

class MeetingTest {
  private static final int SEEDS = 200_000;

  @Test
  void floor_besideBelowAndAboveWhole_isTheLower() {
    // (c − p)/2 = (0 − p)/−1 at p = c/3.
    assertEquals(OptionalLong.of(1), floor(5, 2, 0, -1));
    assertEquals(OptionalLong.of(2), floor(6, 2, 0, -1));
    assertEquals(OptionalLong.of(2), floor(7, 2, 0, -1));
    assertEquals(OptionalLong.of(-2), floor(-5, 2, 0, -1));
    assertEquals(OptionalLong.of(-2), floor(-6, 2, 0, -1));
    assertEquals(OptionalLong.of(-3), floor(-7, 2, 0, -1));
  }

  /** Factors of every size, including those whose products just fit a long or just do not. */
  @Test
  void floor_factorsOfAnySize_isThatOfDecimals() {
    Random random = new Random(1);
    int beyond = 0;
    for (int seed = 0; seed < SEEDS; seed++) {
      int digits = 1 + random.nextInt(62);
      // About equally often below, at and above each relevant number of digits of a product.
      int slopes = Math.min(62, Math.max(1, 59 + random.nextInt(8) - digits));
      Bound one = bound(random, digits, slopes);
      Bound other = bound(random, digits, slopes);
      if (one.delta() == other.delta()) {
        continue;
      }
      BigInteger exact = slow(one, other);
      boolean holds = exact.bitLength() < Long.SIZE;
      OptionalLong expected =
          holds ? OptionalLong.of(exact.longValueExact()) : OptionalLong.empty();
      assertEquals(expected, Meeting.floor(one, other), () -> one + " and " + other);
      beyond += holds ? 0 : 1;
    }
    assertTrue(beyond > 0, "none so far off that no long holds it");
  }

  private static BigInteger slow(Bound one, Bound other) {
    BigDecimal dividend =
        BigDecimal.valueOf(one.c())
            .multiply(BigDecimal.valueOf(other.delta()))
            .subtract(BigDecimal.valueOf(other.c()).multiply(BigDecimal.valueOf(one.delta())));
    BigDecimal divisor =
        BigDecimal.valueOf(other.delta()).subtract(BigDecimal.valueOf(one.delta()));
    return dividend.divide(divisor, 0, RoundingMode.FLOOR).toBigIntegerExact();
  }

  private static Bound bound(Random random, int digits, int slopes) {
    return new Bound(any(random, digits), any(random, slopes), random.nextBoolean());
  }

  /** With that many binary digits at most: the largest, the smallest, or any. */
  private static long any(Random random, int digits) {
    long most = (1L << digits) - 1;
    long size =
        switch (random.nextInt(3)) {
          case 0 -> most;
          case 1 -> 1L << digits - 1;
          default -> random.nextLong() & most;
        };
    return random.nextBoolean() ? size : -size;
  }

  private static OptionalLong floor(long c, long delta, long otherC, long otherDelta) {
    return Meeting.floor(new Bound(c, delta, true), new Bound(otherC, otherDelta, true));
  }
}
