package org.jawroom.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BoxTest {
  private static final Box UNIT = cube(0, 0, 0, 10);

  @ParameterizedTest
  @CsvSource({
    "X, 9, -1", "X, 10, 0", "X, 11, 1", "X, -9, -1", "X, -10, 0", "X, -11, 1",
    "Y, 9, -1", "Y, 10, 0", "Y, 11, 1", "Y, -9, -1", "Y, -10, 0", "Y, -11, 1",
    "Z, 9, -1", "Z, 10, 0", "Z, 11, 1", "Z, -9, -1", "Z, -10, 0", "Z, -11, 1"
  })
  void gapTo_belowAtAndAboveTouching_isSignedDistanceOnThatAxis(Axis axis, long shift, long gap) {
    Box other =
        cube(
            axis == Axis.X ? shift : 0, axis == Axis.Y ? shift : 0, axis == Axis.Z ? shift : 0, 10);

    assertEquals(gap, UNIT.gapTo(other));
    assertEquals(gap, other.gapTo(UNIT));
    assertEquals(axis, UNIT.gapAxis(other));
  }

  @Test
  void gapTo_apartOnTwoAxes_understatesTheDiagonal() {
    // An axis-aligned gap never exceeds the distance: [0,10]² and [13,20]×[14,20] are 3 and 4 apart
    // along the axes and 5 apart in truth (3-4-5; separating-axis gaps, Gottschalk, Lin, Manocha,
    // OBBTree, 1996).
    Box one = new Box(Interval.of(0, 10), Interval.of(0, 10), Interval.of(0, 1));
    Box other = new Box(Interval.of(13, 20), Interval.of(14, 20), Interval.of(0, 1));

    assertEquals(4, one.gapTo(other));
    assertEquals(Axis.Y, one.gapAxis(other));
  }

  @Test
  void gapAxis_equalOnSeveral_prefersYThenXThenZ() {
    assertEquals(Axis.Y, UNIT.gapAxis(cube(12, 12, 12, 5)));
    assertEquals(
        Axis.X, UNIT.gapAxis(new Box(Interval.of(12, 13), Interval.of(0, 1), Interval.of(12, 13))));
    assertEquals(
        Axis.Z, UNIT.gapAxis(new Box(Interval.of(0, 1), Interval.of(0, 1), Interval.of(12, 13))));
  }

  private static Box cube(long x, long y, long z, long size) {
    return new Box(Interval.of(x, x + size), Interval.of(y, y + size), Interval.of(z, z + size));
  }

  @Test
  void at_shift_movesInThePlaneOnly() {
    Box box = new Box(Interval.of(0, 1), Interval.of(2, 3), Interval.of(4, 5));
    assertEquals(
        new Box(Interval.of(10, 11), Interval.of(-18, -17), Interval.of(4, 5)), box.at(10, -20));
    assertEquals(Interval.of(0, 1), box.along(Axis.X));
    assertEquals(Interval.of(2, 3), box.along(Axis.Y));
    assertEquals(Interval.of(4, 5), box.along(Axis.Z));
  }
}
