package org.jawroom.placement.bolting;

import static org.jawroom.geometry.Length.MM;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Rectangle;
import org.jawroom.reference.MachineDraft;
import org.jawroom.shop.Machine;
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

  /** The positions of a base of that size that begins at −310 and −160 from the vise's origin. */
  private static Optional<Rectangle> within(long length, long width) {
    MachineDraft draft = new MachineDraft();
    draft.tableLength = 600 * MM;
    draft.tableWidth = 300 * MM;
    Machine machine = draft.build();
    Rectangle base =
        new Rectangle(
            Interval.of(-310 * MM, -310 * MM + length), Interval.of(-160 * MM, -160 * MM + width));
    return Overhang.within(machine, OVER, base);
  }

  private static Optional<Rectangle> places(long xLo, long xHi, long yLo, long yHi) {
    return Optional.of(new Rectangle(Interval.of(xLo, xHi), Interval.of(yLo, yHi)));
  }
}
