package org.jawroom.placement.bolting;

import static org.jawroom.geometry.Length.MM;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import java.util.OptionalLong;
import org.jawroom.clearance.Certainty;
import org.jawroom.fixture.MachineDraft;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.IntervalSet;
import org.jawroom.geometry.Orientation;
import org.jawroom.geometry.Rectangle;
import org.jawroom.placement.space.Place;
import org.jawroom.placement.space.Strips;
import org.jawroom.shop.machine.Machine;
import org.junit.jupiter.api.Test;

/** A table of 600 × 300; an overhang of 10 is allowed over each edge. */
class OverhangTest {
  private static final long OVER = 10 * MM;

  @Test
  void within_baseBelowAtAndAboveWhatMayHang_exactlyAsLongStandsInOnePlace() {
    assertEquals(places(0, 1, 0, 0), within(620 * MM - 1, 320 * MM));
    assertEquals(places(0, 0, 0, 0), within(620 * MM, 320 * MM));
    assertEquals(Optional.empty(), within(620 * MM + 1, 320 * MM));
    assertEquals(places(0, 0, 0, 1), within(620 * MM, 320 * MM - 1));
    assertEquals(Optional.empty(), within(620 * MM, 320 * MM + 1));
  }

  @Test
  void at_baseWithoutEnd_isEmpty() {
    Interval width = Interval.of(-100 * MM, 100 * MM);
    Rectangle known = new Rectangle(Interval.of(-400 * MM, 100 * MM), width);
    Rectangle endless = new Rectangle(Interval.of(-Certainty.FAR, 100 * MM), width);
    Place place = new Place(0, 0);

    assertEquals(OptionalLong.of(100 * MM), Overhang.at(table(), Optional.of(known), place));
    assertEquals(OptionalLong.empty(), Overhang.at(table(), Optional.of(endless), place));
    assertEquals(OptionalLong.empty(), Overhang.at(table(), Optional.empty(), place));
  }

  @Test
  void leastEndwise_alongStrips_isThatOfThePlaceNearestToCentred() {
    // Places x from 250 to 400 beside a table that ends at 300; turned right the base reaches from
    // −100 to 200 along x, so that the nearest place, 250, has it end at 450.
    Strips strips = strips(250, 400, IntervalSet.of(-140 * MM, -130 * MM, 60 * MM, 90 * MM));
    assertEquals(150 * MM, leastEndwise(-100, 200, Orientation.RIGHT, strips));
    // Turned left it reaches from −200 to 100, and ends at 350.
    assertEquals(50 * MM, leastEndwise(-100, 200, Orientation.LEFT, strips));
    assertEquals(0, leastEndwise(-100, 50, Orientation.RIGHT, strips));
  }

  @Test
  void leastEndwise_acrossStrips_takesTheBestOfThem() {
    // Toward the front u points down y; the table ends at ±150.
    Strips strips = strips(-10, 10, IntervalSet.of(-140 * MM, -130 * MM, 60 * MM, 90 * MM));
    // Of y = −130 and y = 60: the base ends at −330, 180 over, or from 160 to −140, 10 over.
    assertEquals(10 * MM, leastEndwise(-100, 200, Orientation.FRONT, strips));
    // Toward the rear: from −230 to 70, 80 over, or from −40 to 260, 110 over.
    assertEquals(80 * MM, leastEndwise(-100, 200, Orientation.REAR, strips));
  }

  @Test
  void leastEndwise_baseOfAnOddLength_takesTheSmallerSide() {
    // Symmetric about y = −½ when toward the rear: −1 and 0 hang over alike, 1 by one more.
    Interval base = Interval.of(-200 * MM, 200 * MM + 1);
    long over = 50 * MM + 1;
    assertEquals(over, Overhang.leastEndwise(table(), base, Orientation.REAR, at(-1)));
    assertEquals(over, Overhang.leastEndwise(table(), base, Orientation.REAR, at(0)));
    assertEquals(over + 1, Overhang.leastEndwise(table(), base, Orientation.REAR, at(1)));
    Strips both = strips(0, 0, IntervalSet.of(-2, -2, 1, 1));
    assertEquals(over + 1, Overhang.leastEndwise(table(), base, Orientation.REAR, both));
    Strips lower = strips(0, 0, IntervalSet.of(-3, -2, 2, 2));
    assertEquals(over + 1, Overhang.leastEndwise(table(), base, Orientation.REAR, lower));
  }

  private static long leastEndwise(long lo, long hi, Orientation turn, Strips places) {
    return Overhang.leastEndwise(table(), Interval.of(lo * MM, hi * MM), turn, places);
  }

  /** Along x, its ends in millimetres. */
  private static Strips strips(long lo, long hi, IntervalSet y) {
    return Strips.of(Axis.X, lo * MM, hi * MM, y);
  }

  private static Strips at(long y) {
    return strips(0, 0, IntervalSet.of(y, y));
  }

  private static Machine table() {
    MachineDraft draft = new MachineDraft();
    draft.tableLength = 600 * MM;
    draft.tableWidth = 300 * MM;
    return draft.build();
  }

  /** Of a base that reaches from the vise's origin −310 and −160 on so far. */
  private static Optional<Rectangle> within(long length, long width) {
    Rectangle base =
        new Rectangle(
            Interval.of(-310 * MM, -310 * MM + length), Interval.of(-160 * MM, -160 * MM + width));
    return Overhang.within(table(), OVER, base);
  }

  private static Optional<Rectangle> places(long xLo, long xHi, long yLo, long yHi) {
    return Optional.of(new Rectangle(Interval.of(xLo, xHi), Interval.of(yLo, yHi)));
  }
}
