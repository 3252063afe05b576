package org.jawroom.report.card.statement.bolting;

import static org.jawroom.geometry.Length.MM;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.jawroom.geometry.Interval;
import org.jawroom.standards.TNut;
import org.jawroom.standards.Washer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BoltLengthTest {

  /**
   * By hand: washer 2.5, flange 20, M12 in a nut 16 high, its neck 8: the top 12 − 8 to 19 − 8
   * deep.
   */
  @Test
  void of_m12ThroughTwentyOfFlange_engagesADiameterAndStaysInTheNut() {
    BoltLength length = BoltLength.of(nut(14), OptionalLong.of(20 * MM), 0, 14 * MM);
    assertEquals(34 * MM + MM / 2, length.addLeast());
    assertEquals(38 * MM + MM / 2, length.addMost());
    assertEquals(Optional.of(Interval.of(4 * MM, 11 * MM)), length.depth());
    assertEquals(
        List.of(
            new BoltLength.Choice(40, tenths(40, 55)), new BoltLength.Choice(45, tenths(65, 105))),
        length.choices());
  }

  @Test
  void of_flangeKnownToHalfAMillimetre_bothEndsGiveWay() {
    BoltLength length = BoltLength.of(nut(14), OptionalLong.of(20 * MM), MM / 2, 14 * MM);
    assertEquals(35 * MM, length.addLeast());
    assertEquals(38 * MM, length.addMost());
  }

  /** The nut's thread is 4 longer than a diameter: ± 2 is the most that leaves a length. */
  @Test
  void possible_flangeKnownToFive_isNot() {
    assertTrue(BoltLength.of(nut(14), OptionalLong.of(20 * MM), 2 * MM, 14 * MM).possible());
    BoltLength length = BoltLength.of(nut(14), OptionalLong.of(20 * MM), 2 * MM + 1, 14 * MM);
    assertFalse(length.possible());
    assertEquals(List.of(), length.choices());
  }

  @Test
  void of_slotOutsideTheSeries_offersNoLength() {
    BoltLength length = BoltLength.of(nut(14), OptionalLong.of(20 * MM), 0, 16 * MM);
    assertEquals(Optional.empty(), length.depth());
    assertEquals(List.of(), length.choices());
  }

  /** Whatever is offered, at both ends of the depths it is offered for. */
  @Test
  void choices_ofEveryNutAndFlange_engageADiameterAndNeverComeOut() {
    int checked = 0;
    for (TNut nut : TNut.DIN_508) {
      long d = nut.thread() * MM;
      long h = nut.height() * (MM / 10);
      for (long grip = 8 * MM; grip <= 60 * MM; grip += MM / 2) {
        for (long off : new long[] {-MM / 2, MM / 2}) {
          BoltLength length = BoltLength.of(nut, OptionalLong.of(grip), MM / 2, nut.slot() * MM);
          for (BoltLength.Choice choice : length.choices()) {
            long into = choice.millimetres() * MM - (grip + off) - Washer.thickness(d);
            assertTrue(into - choice.depth().hi() >= d, nut + " " + grip + " " + choice);
            assertTrue(into - choice.depth().lo() <= h, nut + " " + grip + " " + choice);
            checked++;
          }
        }
      }
    }
    assertTrue(checked > 1000, "checked " + checked);
  }

  /**
   * How deep at least a DIN 508 nut's top stands in its slot: D1 of BS 2485 and ANSI/ASME B5.1M,
   * nuts of DIN 508 from an open data file, as transcribed.
   */
  @ParameterizedTest
  @CsvSource({
    "5, 0",
    "6, 1",
    "8, 3",
    "10, 3",
    "12, 4",
    "14, 4",
    "18, 6",
    "22, 6",
    "28, 8",
    "36, 11",
    "42, 13",
    "48," + " 14",
    "54, 14",
  })
  void depth_ofEverySlot_nutStaysBelowTheTable(int slot, long least) {
    long lo =
        BoltLength.of(nut(slot), OptionalLong.empty(), 0, slot * MM).depth().orElseThrow().lo();
    assertEquals(least * MM, lo);
  }

  private static Interval tenths(long lo, long hi) {
    return Interval.of(lo * (MM / 10), hi * (MM / 10));
  }

  static TNut nut(int slot) {
    return TNut.DIN_508.stream().filter(nut -> nut.slot() == slot).findFirst().orElseThrow();
  }
}
