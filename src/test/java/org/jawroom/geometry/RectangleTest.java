package org.jawroom.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RectangleTest {
  private static final Interval X = Interval.of(0, 100);
  private static final Interval Y = Interval.of(-20, 50);
  private static final Rectangle TABLE = new Rectangle(X, Y);

  @Test
  void along_eachAxisOfThePlane_isThatSide() {
    assertEquals(X, TABLE.along(Axis.X));
    assertEquals(Y, TABLE.along(Axis.Y));
    assertThrows(IllegalArgumentException.class, () -> TABLE.along(Axis.Z));
  }

  @Test
  void of_eitherAxis_isTurnedThatWay() {
    assertEquals(TABLE, Rectangle.of(Axis.X, X, Y));
    assertEquals(TABLE, Rectangle.of(Axis.Y, Y, X));
  }

  @Test
  void at_shift_movesBothSides() {
    assertEquals(new Rectangle(Interval.of(3, 103), Interval.of(-27, 43)), TABLE.at(3, -7));
  }

  @ParameterizedTest
  @CsvSource({
    "0, -20, true",
    "100, 50, true",
    "-1, 0, false",
    "101, 0, false",
    "0, -21, false",
    "0, 51, false"
  })
  void contains_atAndBeyondTheEdges_countsTheEdges(long x, long y, boolean inside) {
    assertEquals(inside, TABLE.contains(x, y));
  }

  @Test
  void meet_touchingAndApart_isWhatIsCommon() {
    Rectangle corner = new Rectangle(Interval.of(100, 120), Interval.of(50, 60));
    assertEquals(
        Optional.of(new Rectangle(Interval.of(100, 100), Interval.of(50, 50))), TABLE.meet(corner));
    assertEquals(Optional.empty(), TABLE.meet(corner.at(1, 0)));
    assertEquals(Optional.empty(), TABLE.meet(corner.at(0, 1)));
  }

  @ParameterizedTest
  @CsvSource({"0, 0, 0", "-3, 0, 3", "4, 0, 4", "0, -5, 5", "0, 6, 6", "-3, 6, 6", "4, -2, 4"})
  void shortfall_shiftedOut_isTheMostOnAnySide(long dx, long dy, long shortfall) {
    assertEquals(shortfall, TABLE.shortfall(TABLE, dx, dy));
  }
}
