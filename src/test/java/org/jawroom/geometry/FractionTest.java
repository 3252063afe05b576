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

  @Test
  void minAndMax_eitherOrder_areByValue() {
    Fraction less = Fraction.of(-1, 3);
    Fraction more = Fraction.of(1, 4);
    assertEquals(less, Fraction.min(less, more));
    assertEquals(less, Fraction.min(more, less));
    assertEquals(more, Fraction.max(less, more));
    assertEquals(more, Fraction.max(more, less));
  }

  @Test
  void minus_equalDenominators_keepsThem() {
    assertEquals(Fraction.of(2, 7), Fraction.of(5, 7).minus(Fraction.of(3, 7)));
    assertEquals(Fraction.of(4, 1), Fraction.whole(9).minus(Fraction.whole(5)));
  }

  @Test
  void floorAndCeil_beyondALong_areRefused() {
    Fraction huge = Fraction.whole(Long.MAX_VALUE).times(2);
    assertThrows(ArithmeticException.class, huge::floor);
    assertThrows(ArithmeticException.class, huge::ceil);
  }
}
