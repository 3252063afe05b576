package org.jawroom.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;

class IntervalTest {
  private static final Interval FIVE_TO_TEN = Interval.of(5, 10);

  @Test
  void of_backwards_isRefused() {
    assertThrows(IllegalArgumentException.class, () -> Interval.of(1, 0));
    assertEquals(0, Interval.of(1, 1).length());
  }

  @Test
  void meets_touching_counts() {
    assertTrue(FIVE_TO_TEN.meets(Interval.of(10, 12)));
    assertTrue(FIVE_TO_TEN.meets(Interval.of(0, 5)));
    assertFalse(FIVE_TO_TEN.meets(Interval.of(11, 12)));
    assertFalse(FIVE_TO_TEN.meets(Interval.of(0, 4)));
    assertEquals(Optional.of(Interval.of(10, 10)), FIVE_TO_TEN.meet(Interval.of(10, 12)));
    assertEquals(Optional.empty(), FIVE_TO_TEN.meet(Interval.of(11, 12)));
  }

  @Test
  void contains_ends_countAsInside() {
    assertTrue(FIVE_TO_TEN.contains(5));
    assertTrue(FIVE_TO_TEN.contains(10));
    assertFalse(FIVE_TO_TEN.contains(4));
    assertFalse(FIVE_TO_TEN.contains(11));
  }

  @Test
  void sweptBy_shifts_isTheIntervalSum() {
    // Slot 1 to slot 3 over two pitches of 100 ± 0.3: R. E. Moore, Interval Analysis, 1966: [199.4,
    // 200.6].
    Interval pitch = Interval.of(997, 1003);
    assertEquals(Interval.of(1994, 2006), pitch.sweptBy(pitch));
    // And not 0 when an uncertain length is subtracted from an equally uncertain one: the
    // dependency problem of interval arithmetic.
    assertEquals(Interval.of(-6, 6), pitch.sweptBy(pitch.negated()));
  }

  @Test
  void gapTo_belowAtAndAboveTouching_isSigned() {
    assertEquals(-1, FIVE_TO_TEN.gapTo(Interval.of(9, 20)));
    assertEquals(0, FIVE_TO_TEN.gapTo(Interval.of(10, 20)));
    assertEquals(1, FIVE_TO_TEN.gapTo(Interval.of(11, 20)));
    assertEquals(1, FIVE_TO_TEN.gapTo(Interval.of(0, 4)));
  }

  @Test
  void length_roundingToAGrain_goesTheWayItSays() {
    assertEquals(20, Length.floorTo(29, 10));
    assertEquals(30, Length.ceilTo(21, 10));
    assertEquals(20, Length.ceilTo(20, 10));
    assertEquals(-30, Length.floorTo(-21, 10));
    assertEquals(-20, Length.ceilTo(-29, 10));
  }

  @Test
  void shortfall_belowAtAndAboveTheEdge_isTheMostOnAnySide() {
    Rectangle reach = new Rectangle(Interval.of(0, 100), Interval.of(0, 50));
    assertEquals(0, reach.shortfall(new Rectangle(Interval.of(0, 100), Interval.of(0, 50)), 0, 0));
    assertEquals(1, reach.shortfall(new Rectangle(Interval.of(-1, 100), Interval.of(0, 50)), 0, 0));
    assertEquals(
        7, reach.shortfall(new Rectangle(Interval.of(-1, 103), Interval.of(-7, 52)), 0, 0));
  }

  @Test
  void made_fromOthers_isWhatItSays() {
    assertEquals(Interval.of(7, 13), Interval.around(10, 3));
    assertEquals(5, FIVE_TO_TEN.length());
    assertEquals(Interval.of(2, 7), FIVE_TO_TEN.plus(-3));
    assertEquals(Interval.of(-10, -5), FIVE_TO_TEN.negated());
    assertEquals(Interval.of(4, 12), FIVE_TO_TEN.grown(1, 2));
    assertEquals(Interval.of(3, 10), FIVE_TO_TEN.hull(Interval.of(3, 4)));
    assertEquals(Interval.of(5, 11), FIVE_TO_TEN.hull(Interval.of(6, 11)));
  }
}
