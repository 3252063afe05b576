package org.jawroom.placement.space;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.IntervalSet;
import org.jawroom.geometry.Rectangle;
import org.junit.jupiter.api.Test;

class StripsTest {
  /** Two along x, from y 0 to 4 and from y 10 to 12. */
  private static final Strips TWO = Strips.of(Axis.X, -20, 20, IntervalSet.of(0, 4, 10, 12));

  @Test
  void rectangles_alongEitherAxis_areTheStrips() {
    assertEquals(List.of(rectangle(-20, 20, 0, 4), rectangle(-20, 20, 10, 12)), TWO.rectangles());
    assertEquals(
        List.of(rectangle(0, 4, -20, 20), rectangle(10, 12, -20, 20)),
        Strips.of(Axis.Y, -20, 20, IntervalSet.of(0, 4, 10, 12)).rectangles());
  }

  @Test
  void ofRectangle_alongXOrY_isThatRectangle() {
    Rectangle places = rectangle(0, 9, 3, 5);
    for (Axis along : List.of(Axis.X, Axis.Y)) {
      assertEquals(List.of(places), Strips.of(along, places).rectangles());
      assertEquals(places.along(along).hi(), Strips.of(along, places).pHi);
    }
  }

  @Test
  void of_endsBelowAtAndAboveTheNext_refusesStripsThatTouch() {
    for (long end : new long[] {10, 11}) {
      long[] q = {0, end, 10, 12};
      assertThrows(IllegalArgumentException.class, () -> IntervalSet.of(q));
    }
    assertEquals(2, Strips.of(Axis.X, 0, 1, IntervalSet.of(0, 9, 10, 12)).rectangles().size());
  }

  @Test
  void of_noPlace_isRefused() {
    assertThrows(IllegalArgumentException.class, () -> Strips.of(Axis.X, 0, 1, IntervalSet.of()));
    assertThrows(IllegalArgumentException.class, () -> Strips.of(Axis.X, 0, 1, IntervalSet.of(3)));
    assertThrows(
        IllegalArgumentException.class, () -> Strips.of(Axis.X, 0, 1, IntervalSet.of(3, 2)));
    assertThrows(
        IllegalArgumentException.class, () -> Strips.of(Axis.X, 1, 0, IntervalSet.of(2, 3)));
    assertEquals(1, Strips.of(Axis.X, 1, 1, IntervalSet.of(3, 3)).rectangles().size());
  }

  @Test
  void meet_belowAtAndAboveALimit_holdsWhatTouches() {
    assertEquals(
        List.of(rectangle(0, 20, 4, 4), rectangle(0, 20, 10, 10)),
        TWO.meet(rectangle(0, 99, 4, 10)).orElseThrow().rectangles());
    assertEquals(
        List.of(rectangle(20, 20, 0, 4)),
        TWO.meet(rectangle(20, 99, -9, 9)).orElseThrow().rectangles());
    assertEquals(Optional.empty(), TWO.meet(rectangle(21, 99, 0, 4)));
    assertEquals(Optional.empty(), TWO.meet(rectangle(0, 1, 5, 9)));
  }

  @Test
  void hold_belowAtAndAboveEachSide_touchingCounts() {
    List<long[]> held = List.of(new long[] {-20, 0}, new long[] {20, 4}, new long[] {0, 10});
    List<long[]> not =
        List.of(
            new long[] {-21, 0},
            new long[] {21, 4},
            new long[] {0, -1},
            new long[] {0, 5},
            new long[] {0, 9},
            new long[] {0, 13});
    for (long[] at : held) {
      assertTrue(TWO.hold(at[0], at[1]), at[0] + ", " + at[1]);
    }
    for (long[] at : not) {
      assertTrue(!TWO.hold(at[0], at[1]), at[0] + ", " + at[1]);
    }
  }

  @Test
  void at_eachStrip_isWhereItBegins() {
    assertArrayEquals(new int[] {0, 0, 2, 2}, new int[] {at(0), at(4), at(10), at(12)});
  }

  private static int at(long q) {
    return TWO.at(q);
  }

  private static Rectangle rectangle(long xLo, long xHi, long yLo, long yHi) {
    return new Rectangle(Interval.of(xLo, xHi), Interval.of(yLo, yHi));
  }
}
