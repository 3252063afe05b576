package org.jawroom.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.Random;
import org.junit.jupiter.api.Test;

class FractionTest {

  @Test
  void floorTimesAndCeilTimes_eitherSideOfZero_roundOutward() {
    assertEquals(3, Fraction.of(7, 2).floorTimes(1));
    assertEquals(4, Fraction.of(7, 2).ceilTimes(1));
    assertEquals(-4, Fraction.of(-7, 2).floorTimes(1));
    assertEquals(-3, Fraction.of(7, -2).ceilTimes(1));
    assertEquals(7, Fraction.of(7, 2).floorTimes(2));
    assertEquals(7, Fraction.of(7, 2).ceilTimes(2));
  }

  @Test
  void of_denominatorZero_isRefused() {
    assertThrows(ArithmeticException.class, () -> Fraction.of(1, 0));
    assertThrows(ArithmeticException.class, () -> new Fraction(1, -2));
  }

  @Test
  void minAndMax_equalValues_keepTheFirst() {
    Fraction half = Fraction.of(1, 2);
    Fraction same = Fraction.of(2, 4);
    assertEquals(half, Fraction.min(half, same));
    assertEquals(half, Fraction.max(half, same));
    assertEquals(half, Fraction.min(half, Fraction.ONE));
    assertEquals(Fraction.ONE, Fraction.max(half, Fraction.ONE));
  }

  @Test
  void compareTo_randomFractionsNearEachOther_asBigIntegersHaveIt() {
    Random random = new Random(1);
    int equal = 0;
    for (int i = 0; i < 20_000; i++) {
      Fraction one = fraction(random);
      Fraction other = near(one, random);

      int expected =
          big(one.numerator())
              .multiply(big(other.denominator()))
              .compareTo(big(other.numerator()).multiply(big(one.denominator())));

      assertEquals(expected, Integer.signum(one.compareTo(other)), () -> one + " and " + other);
      equal += expected == 0 ? 1 : 0;
    }
    assertTrue(equal > 1_000 && equal < 19_000, equal + " equal ones");
  }

  @Test
  void compareDifferences_randomFractionsNearEachOther_asBigIntegersHaveIt() {
    Random random = new Random(2);
    int equal = 0;
    for (int i = 0; i < 20_000; i++) {
      Fraction a = fraction(random);
      Fraction b = fraction(random);
      Fraction c = near(a, random);
      Fraction d = random.nextInt(3) == 0 ? b : near(b, random);

      // (a − b) − (c − d), over the product of all four denominators.
      BigInteger sum = BigInteger.ZERO;
      Fraction[] terms = {a, b, c, d};
      for (int t = 0; t < 4; t++) {
        BigInteger term = big(terms[t].numerator());
        for (int other = 0; other < 4; other++) {
          term = other == t ? term : term.multiply(big(terms[other].denominator()));
        }
        sum = t == 0 || t == 3 ? sum.add(term) : sum.subtract(term);
      }

      equal += sum.signum() == 0 ? 1 : 0;
      assertEquals(
          sum.signum(),
          Integer.signum(Fraction.compareDifferences(a, b, c, d)),
          () -> a + " - " + b + " and " + c + " - " + d);
    }
    assertTrue(equal > 500, "only " + equal + " equal ones");
  }

  @Test
  void compareDifferences_allZero_areEqual() {
    Fraction zero = Fraction.ZERO;
    assertEquals(0, Fraction.compareDifferences(zero, zero, zero, zero));
  }

  @Test
  void floorTimes_randomFractions_asBigDecimalsHaveIt() {
    Random random = new Random(3);
    int compared = 0;
    for (int i = 0; i < 5_000; i++) {
      Fraction one = fraction(random);
      long factor = random.nextLong() >> 26;
      BigDecimal product = new BigDecimal(big(one.numerator()).multiply(big(factor)));
      BigDecimal by = new BigDecimal(one.denominator());

      if (product.abs().compareTo(by.multiply(new BigDecimal(Long.MAX_VALUE))) < 0) {
        assertEquals(
            product.divide(by, 0, RoundingMode.FLOOR).longValueExact(), one.floorTimes(factor));
        assertEquals(
            product.divide(by, 0, RoundingMode.CEILING).longValueExact(), one.ceilTimes(factor));
        compared++;
      }
    }
    assertTrue(compared > 1_000, "only " + compared + " within a long");
  }

  /** As large as positions within 100 m, and some far larger. */
  private static Fraction fraction(Random random) {
    int shift = random.nextInt(10) == 0 ? 2 : 25;
    return Fraction.of(random.nextLong() >> shift, (random.nextLong() >>> shift) + 1);
  }

  /** Sometimes equal, with the same or another denominator, or off by as little as one. */
  private static Fraction near(Fraction one, Random random) {
    return switch (random.nextInt(4)) {
      case 0 -> one;
      case 1 -> new Fraction(one.numerator() / 2 * 2, Math.max(2, one.denominator() / 2 * 2));
      case 2 ->
          Math.abs(one.numerator()) < Long.MAX_VALUE / 4 && one.denominator() < Long.MAX_VALUE / 4
              ? new Fraction(3 * one.numerator(), 3 * one.denominator())
              : one;
      default -> new Fraction(one.numerator() ^ 1, one.denominator());
    };
  }

  private static BigInteger big(long value) {
    return BigInteger.valueOf(value);
  }

  @Test
  void minAndMax_eitherOrder_areByValue() {
    Fraction less = Fraction.of(-1, 3);
    Fraction more = Fraction.of(1, 4);
    assertEquals(less, Fraction.min(less, more));
    assertEquals(less, Fraction.min(more, less));
    assertEquals(more, Fraction.max(less, more));
    assertEquals(more, Fraction.max(more, less));
  }
}
