package org.jawroom.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Random;
import org.junit.jupiter.api.Test;

class OpeningIntervalTest {
  private static final Interval RANGE = Interval.of(10, 13);

  @Test
  void over_shareNotWhole_roundsOutward() {
    OpeningInterval shrinking = new OpeningInterval(Interval.of(-7, 20), Interval.of(0, 25), RANGE);

    // At 11 a third of the way: low end −7 + 7/3 = −4.67, high end 20 + 5/3 = 21.67.
    assertEquals(-5, shrinking.lo(11));
    assertEquals(22, shrinking.hi(11));
  }

  @Test
  void over_ends_areExact() {
    OpeningInterval stretch = new OpeningInterval(Interval.of(-7, 20), Interval.of(0, 25), RANGE);

    assertEquals(Interval.of(-7, 20), stretch.over(Interval.of(10, 10)));
    assertEquals(Interval.of(0, 25), stretch.over(Interval.of(13, 13)));
    assertEquals(Interval.of(-7, 25), stretch.over(RANGE));
  }

  @Test
  void of_singleOpening_holdsBothBoxes() {
    OpeningInterval single =
        new OpeningInterval(Interval.of(0, 5), Interval.of(3, 9), Interval.of(7, 7));

    assertEquals(Interval.of(0, 9), single.over(Interval.of(7, 7)));
  }

  @Test
  void lo_outsideTheRange_isRefused() {
    OpeningInterval stretch = OpeningInterval.constant(Interval.of(0, 1), RANGE);

    assertThrows(IllegalArgumentException.class, () -> stretch.lo(9));
    assertThrows(IllegalArgumentException.class, () -> stretch.hi(14));
  }

  @Test
  void loAndHi_sizesUpToTheLargest_agreeWithDecimals() {
    Random random = new Random(1);
    int rounded = 0;
    for (int i = 0; i < 20_000; i++) {
      long closed = bounded(random);
      long open = bounded(random);
      Interval range = Interval.of(5, 6 + Math.abs(bounded(random)));
      long s = range.lo() + Math.floorMod(random.nextLong(), range.length() + 1);
      OpeningInterval stretch =
          new OpeningInterval(Interval.of(closed, closed), Interval.of(open, open), range);

      BigDecimal exact =
          BigDecimal.valueOf(open - closed).multiply(BigDecimal.valueOf(s - range.lo()));
      BigDecimal length = BigDecimal.valueOf(range.length());
      String input = closed + " " + open + " " + range + " " + s;
      assertEquals(
          closed + exact.divide(length, 0, RoundingMode.FLOOR).longValueExact(),
          stretch.lo(s),
          input);
      assertEquals(
          closed + exact.divide(length, 0, RoundingMode.CEILING).longValueExact(),
          stretch.hi(s),
          input);
      rounded += stretch.lo(s) < stretch.hi(s) ? 1 : 0;
    }
    assertTrue(rounded > 5_000, "only " + rounded + " between whole numbers");
  }

  @Test
  void loAndHi_halfWayOfTheLargest_areExact() {
    Interval range = Interval.of(0, Length.LARGEST);
    Interval least = Interval.of(-Length.LARGEST, -Length.LARGEST);
    OpeningInterval stretch =
        new OpeningInterval(least, Interval.of(Length.LARGEST, Length.LARGEST), range);
    assertEquals(0, stretch.lo(Length.LARGEST / 2));
    assertEquals(0, stretch.hi(Length.LARGEST / 2));
  }

  private static long bounded(Random random) {
    long most = random.nextBoolean() ? Length.LARGEST : 1000;
    return Math.floorMod(random.nextLong(), 2 * most + 1) - most;
  }

  @Test
  void isConstant_onlyIfBothEndsStay() {
    Interval end = Interval.of(0, 5);
    assertEquals(true, OpeningInterval.constant(end, RANGE).isConstant());
    assertEquals(false, new OpeningInterval(end, Interval.of(0, 6), RANGE).isConstant());
    assertEquals(false, new OpeningInterval(end, Interval.of(1, 5), RANGE).isConstant());
    assertEquals(end, OpeningInterval.constant(end, RANGE).over(RANGE));
  }
}
