package org.jawroom.geometry;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;

/** Interval sets against a slow twin that tests every whole point of a short line. */
class IntervalSetTest {
  private static final int LINE = 40;

  @Test
  void of_intervalsThatTouchOrFall_areRefused() {
    assertThrows(IllegalArgumentException.class, () -> IntervalSet.of(0, 9, 9, 12));
    assertThrows(IllegalArgumentException.class, () -> IntervalSet.of(3, 2));
    assertThrows(IllegalArgumentException.class, () -> IntervalSet.of(3));
    assertArrayEquals(new long[] {3, 3, 4, 4}, IntervalSet.of(3, 3, 4, 4).ends());
  }

  @Test
  void around_centresBelowAtAndAboveTwiceTheHalfApart_mergeWhenTheyTouch() {
    assertArrayEquals(
        new long[] {-3, 3, 4, 10}, IntervalSet.around(new long[] {0, 7}, 0, 3).ends());
    assertArrayEquals(new long[] {-3, 9}, IntervalSet.around(new long[] {0, 6}, 0, 3).ends());
    assertArrayEquals(new long[] {-3, 8}, IntervalSet.around(new long[] {0, 5}, 0, 3).ends());
  }

  @Test
  void around_shift_movesEveryCentre() {
    assertArrayEquals(
        new long[] {8, 12, 28, 32}, IntervalSet.around(new long[] {0, 20}, 10, 2).ends());
  }

  @Test
  void meet_randomSets_holdsJustThePointsOfBoth() {
    Random random = new Random(7);
    int met = 0;
    for (int round = 0; round < 2000; round++) {
      IntervalSet one = random(random);
      IntervalSet other = random(random);
      IntervalSet both = one.meet(other);
      for (int point = 0; point <= LINE; point++) {
        assertEquals(
            one.contains(point) && other.contains(point),
            both.contains(point),
            one + " and " + other + " at " + point);
      }
      met += both.isEmpty() ? 0 : 1;
    }
    assertTrue(met > 200, "only " + met);
  }

  private static IntervalSet random(Random random) {
    long[] ends = new long[2 * random.nextInt(4)];
    long at = -1;
    for (int i = 0; i < ends.length; i++) {
      at += i % 2 == 0 ? 1 + random.nextInt(8) : random.nextInt(8);
      ends[i] = at;
    }
    return IntervalSet.of(ends);
  }
}
