package org.jawroom.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class OrientationTest {

  @Test
  void word_eachTurn_namesWhereTheHandlePoints() {
    // The handle is on the +u side: a step along u leads to the side that the turn is named after.
    assertEquals(-1, Orientation.FRONT.y(1, 0));
    assertEquals(1, Orientation.RIGHT.x(1, 0));
    assertEquals(1, Orientation.REAR.y(1, 0));
    assertEquals(-1, Orientation.LEFT.x(1, 0));
  }

  @ParameterizedTest
  @EnumSource(Orientation.class)
  void axes_eachTurn_areRightHanded(Orientation turn) {
    // v = w × u with w = +Z: (ux, uy) turned a quarter counter-clockwise is (−uy, ux).
    assertEquals(-turn.y(1, 0), turn.x(0, 1));
    assertEquals(turn.x(1, 0), turn.y(0, 1));
  }

  @ParameterizedTest
  @EnumSource(Orientation.class)
  void intervals_eachTurn_runFromLeastToGreatestPoint(Orientation turn) {
    Interval u = Interval.of(-3, 10);
    Interval v = Interval.of(-5, 2);
    long[] xs = {turn.x(-3, -5), turn.x(-3, 2), turn.x(10, -5), turn.x(10, 2)};
    long[] ys = {turn.y(-3, -5), turn.y(-3, 2), turn.y(10, -5), turn.y(10, 2)};
    assertEquals(hull(xs), turn.x(u, v));
    assertEquals(hull(ys), turn.y(u, v));
  }

  @ParameterizedTest
  @EnumSource(Orientation.class)
  void intervals_eachTurnThereAndBack_areTheSame(Orientation turn) {
    Interval u = Interval.of(-3, 10);
    Interval v = Interval.of(-5, 2);
    assertEquals(u, turn.u(turn.x(u, v), turn.y(u, v)));
    assertEquals(v, turn.v(turn.x(u, v), turn.y(u, v)));
  }

  private static Interval hull(long[] points) {
    return Interval.of(
        Arrays.stream(points).min().orElseThrow(), Arrays.stream(points).max().orElseThrow());
  }

  @ParameterizedTest
  @EnumSource(Orientation.class)
  void uAxisAndSign_eachTurn_areWhereAStepAlongULeads(Orientation turn) {
    assertEquals(turn.uAxis() == Axis.X ? turn.uSign() : 0, turn.x(1, 0));
    assertEquals(turn.uAxis() == Axis.Y ? turn.uSign() : 0, turn.y(1, 0));
  }

  @Test
  void word_eachTurn_isThatOfTheTables() {
    assertEquals("front", Orientation.FRONT.word());
    assertEquals("left", Orientation.LEFT.word());
  }
}
