package org.jawroom.clearance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.jawroom.clearance.part.Part;
import org.jawroom.fixture.outcome.NamedPieces;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.OpeningInterval;
import org.jawroom.geometry.Orientation;
import org.jawroom.shop.machine.Side;
import org.jawroom.shop.machine.Sides;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class SetupTest {

  @Test
  void of_belowNothing_isRefused() {
    assertThrows(IllegalArgumentException.class, () -> Setup.onRiser(-1));
    assertEquals(Setup.PLAIN, Setup.onRiser(0));
  }

  @ParameterizedTest
  @EnumSource(Side.class)
  void stopped_atOneEnd_cutsThatOneAlone(Side side) {
    assertThrows(IllegalArgumentException.class, () -> Setup.stopped(side, -1));
    Setup stopped = Setup.stopped(side, 7);
    for (Side other : Side.values()) {
      assertEquals(other == side ? 7 : 0, stopped.stops().get(other));
    }
    assertEquals(new Setup(0, new Sides<>(0L, 0L, 0L, 0L)), Setup.stopped(side, 0));
  }

  /** A riser raises every w of a part and changes nothing else of it. */
  @Test
  void raised_part_standsThatMuchHigher() {
    Interval range = Interval.of(0, 10);
    OpeningInterval u = new OpeningInterval(Interval.of(0, 5), Interval.of(3, 9), range);
    Part part =
        NamedPieces.part(
            "swivel", 9, true, Situation.LOADING, u, Interval.of(-1, 1), Interval.of(-4, 6), 2);
    assertEquals(
        NamedPieces.part(
            "swivel", 9, true, Situation.LOADING, u, Interval.of(-1, 1), Interval.of(16, 26), 2),
        part.raised(20));
    assertEquals(Interval.of(16, 26), part.raised(20).over(range, Orientation.REAR).z());
  }
}
