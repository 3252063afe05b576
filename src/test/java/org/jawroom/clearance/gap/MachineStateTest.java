package org.jawroom.clearance.gap;

import static org.jawroom.geometry.Length.MM;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.OptionalLong;
import org.jawroom.clearance.Situation;
import org.jawroom.clearance.part.Part;
import org.jawroom.fixture.MachineDraft;
import org.jawroom.fixture.outcome.NamedPieces;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.OpeningInterval;
import org.jawroom.geometry.Orientation;
import org.jawroom.shop.Settings;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.value.Dimension;
import org.junit.jupiter.api.Test;

/** A block of 100 × 100 on a table of 800 × 300; the rear cover 10 from it at the nearest. */
class MachineStateTest {
  private static final Interval OPENING = Interval.of(0, 100 * MM);
  private static final long TRAVEL_Y = 200 * MM;

  @Test
  void at_eachSpindlePosition_standsAsFarOffAsTheTable() {
    // The table stands toward the rear at the spindle's least y, so the cover is nearest there.
    assertEquals(10 * MM + 100 * MM, coverGap(MachineState.cutting(0, -TRAVEL_Y / 2, 0)));
    assertEquals(10 * MM + 200 * MM, coverGap(MachineState.cutting(0, 0, 0)));
    assertEquals(10 * MM + 300 * MM, coverGap(MachineState.cutting(0, TRAVEL_Y / 2, 0)));
    assertEquals(
        10 * MM + 250 * MM, coverGap(MachineState.loading(machine(OptionalLong.of(50 * MM)), 0)));
  }

  @Test
  void at_spindleBeyondItsReach_isRefused() {
    for (long beyond : new long[] {-TRAVEL_Y / 2 - 1, TRAVEL_Y / 2 + 1}) {
      assertThrows(
          IllegalArgumentException.class, () -> coverGap(MachineState.cutting(0, beyond, 0)));
    }
    coverGap(MachineState.cutting(150 * MM, 0, 0));
    for (long beyond : new long[] {-150 * MM - 1, 150 * MM + 1}) {
      assertThrows(
          IllegalArgumentException.class, () -> coverGap(MachineState.cutting(beyond, 0, 0)));
    }
  }

  private static long coverGap(MachineState moment) {
    Machine machine = machine(OptionalLong.of(50 * MM));
    OpeningInterval u = OpeningInterval.constant(Interval.of(-50 * MM, 50 * MM), OPENING);
    Interval side = Interval.of(-50 * MM, 50 * MM);
    List<Part> parts =
        List.of(
            NamedPieces.part("block", 0, false, Situation.CUTTING, u, side, Interval.of(0, MM), 0),
            NamedPieces.part("block", 0, false, Situation.LOADING, u, side, Interval.of(0, MM), 0));
    List<Limit> limits =
        MomentGaps.of(Settings.DEFAULTS, machine, 0, parts).at(moment, Orientation.FRONT, 0, 0);
    assertEquals(
        List.of("rear cover"), limits.stream().map(limit -> limit.guard().name()).toList());
    assertEquals(moment.situation(), limits.get(0).situation());
    return limits.get(0).gap();
  }

  private static Machine machine(OptionalLong loadY) {
    MachineDraft draft = new MachineDraft();
    draft.tableLength = 800 * MM;
    draft.tableWidth = 300 * MM;
    draft.travelX = 300 * MM;
    draft.travelY = TRAVEL_Y;
    draft.rearGap = Dimension.of(10 * MM);
    draft.loadY = loadY;
    return draft.build();
  }
}
