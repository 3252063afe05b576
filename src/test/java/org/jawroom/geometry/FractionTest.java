package org.jawroom.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class FractionTest {

  @Test
  void floorAndCeil_negative_roundDownAndUp() {
    assertEquals(-4, Fraction.of(-7, 2).floor());
    assertEquals(-3, Fraction.of(-7, 2).ceil());
    assertEquals(3, Fraction.of(7, 2).floor());
    assertEquals(4, Fraction.of(7, 2).ceil());
    assertEquals(-3, Fraction.of(6, -2).floor());
    assertEquals(-3, Fraction.of(6, -2).ceil());
  }

  @Test
  void compareTo_unreduced_comparesByValue() {
    assertEquals(0, Fraction.of(1, 2).compareTo(Fraction.of(2, 4)));
    assertTrue(Fraction.of(-1, 3).compareTo(Fraction.of(-1, 4)) < 0);
    assertTrue(Fraction.of(1, -3).compareTo(Fraction.ZERO) < 0);
  }

  @Test
  void arithmetic_mixed_isExact() {
    Fraction sixth = Fraction.of(1, 2).minus(Fraction.of(1, 3));

    assertEquals(0, sixth.compareTo(Fraction.of(1, 6)));
    assertEquals(0, sixth.times(6).compareTo(Fraction.ONE));
    assertEquals(0, Fraction.ONE.dividedBy(-6).compareTo(Fraction.of(-1, 6)));
  }

  @Test
  void of_zeroDenominator_isRefused() {
    assertThrows(ArithmeticException.class, () -> Fraction.of(1, 0));
  }
}
