package org.jawroom.standards;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import org.jawroom.geometry.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TSlotTest {
  private static final long MM = Length.MM;
  private static final long MICROMETRE = Length.MM / 1000;

  /**
   * BS 2485, transcribed from a published table of it: throat, pitches (bracketed ones included).
   * The table prints 62 for the middle pitch of the 6 mm slot; its neighbours and the R10 series
   * make it 32. H12 of the throat: ISO 286, transcribed; in micrometres.
   */
  @ParameterizedTest
  @CsvSource({
    "5, 120, 20 25 32",
    "6, 120, 25 32 40",
    "8, 150, 32 40 50",
    "10, 150, 40 50 63",
    "12, 180, 40 50 63 80",
    "14, 180, 50 63 80 100",
    "18, 180, 63 80 100 125",
    "22, 210, 80 100 125 160",
    "28, 210, 100 125 160 200",
    "36, 250, 125 160 200 250",
    "42, 250, 160 200 250 320",
    "48, 250, 200 250 320 400",
    "54, 300, 250 320 400 500"
  })
  void metric_eachRow_isAsPublished(int throat, int h12, String pitches) {
    TSlot row = TSlot.metric(throat * Length.MM).orElseThrow();
    List<Long> expected =
        Arrays.stream(pitches.split(" ")).map(p -> Long.parseLong(p) * Length.MM).toList();
    assertEquals(expected, row.pitches());
    assertEquals(throat * Length.MM, row.width());
    assertEquals(h12 * MICROMETRE, row.widest() - row.width());
    assertTrue(TSlot.metric(row.widest()).isPresent());
    assertTrue(TSlot.metric(row.widest() + 1).isEmpty());
    assertTrue(TSlot.metric(row.width() - 1).isEmpty());
  }

  @Test
  void metric_rows_areThirteen() {
    assertEquals(13, TSlot.METRIC.size());
  }

  /**
   * ANSI/ASME B5.1M-1985, transcribed from a published table of it: throat in thousandths; + 0.010
   * in.
   */
  @ParameterizedTest
  @ValueSource(ints = {282, 344, 438, 562, 688, 812, 1062, 1312, 1562})
  void inchThroat_eachRow_isAsPublished(int mils) {
    long mil = Length.INCH / 1000;
    assertTrue(TSlot.INCH_THROATS.contains(mils * mil));
    assertTrue(TSlot.isInchThroat((mils - 1) * mil));
    assertFalse(TSlot.isInchThroat((mils - 1) * mil - 1));
    assertTrue(TSlot.isInchThroat((mils + 10) * mil));
    assertFalse(TSlot.isInchThroat((mils + 10) * mil + 1));
  }

  @Test
  void inchThroats_areNine() {
    assertEquals(9, TSlot.INCH_THROATS.size());
  }

  /** The same sizes as fractions of an inch: common practice, no source. */
  @ParameterizedTest
  @ValueSource(ints = {18, 22, 28, 36, 44, 52, 68, 84, 100})
  void inchThroat_asSixtyFourths_isInTheSeries(int sixtyFourths) {
    assertTrue(TSlot.isInchThroat(sixtyFourths * Length.INCH / 64));
  }

  /** Widths met in shops that are in neither series. */
  @ParameterizedTest
  @ValueSource(longs = {15_875, 16_000, 20_000, 4_999})
  void width_offBothSeries_isInNeither(long micrometres) {
    assertTrue(TSlot.metric(micrometres * MICROMETRE).isEmpty());
    assertFalse(TSlot.isInchThroat(micrometres * MICROMETRE));
  }

  /** Pitch tolerances of BS 2485, transcribed from a published table of it; in micrometres. */
  @ParameterizedTest
  @CsvSource({
    "5, 25, 200",
    "8, 32, 300",
    "14, 100, 300",
    "18, 125, 500",
    "36, 250, 500",
    "54, 320, 800"
  })
  void pitch_atItsTolerance_countsAndBeyondNot(int throat, int pitch, int tolerance) {
    TSlot row = TSlot.metric(throat * Length.MM).orElseThrow();
    long off = tolerance * MICROMETRE;
    assertTrue(row.hasPitch(pitch * Length.MM + off));
    assertTrue(row.hasPitch(pitch * Length.MM - off));
    assertFalse(row.hasPitch(pitch * Length.MM + off + 1));
    assertFalse(row.hasPitch(pitch * Length.MM - off - 1));
  }

  /**
   * h and c of the slot series, least and greatest, from BS 2485 and ANSI/ASME B5.1M-1985 as
   * reprinted (one transcriber; equal to ISO 299 from memory). The throat is h − c; for 5 mm B5.1M
   * has another c, 3 at least.
   */
  @ParameterizedTest
  @CsvSource({
    "5, 8, 10, 3, 4.5",
    "6, 11, 13, 5, 6",
    "8, 15, 18, 7, 8",
    "10, 17, 21, 7, 8",
    "12, 20, 25, 8, 9",
    "14, 23, 28, 9, 11",
    "18, 30, 36, 12, 14",
    "22, 38, 45, 16, 18",
    "28, 48, 56, 20, 22",
    "36, 61, 71, 25," + " 28",
    "42, 74, 85, 32, 35",
    "48, 84, 95, 36, 40",
    "54, 94, 106, 40, 44",
  })
  void throat_everyRow_isHeightLessHeadspace(
      int slot, double hMin, double hMax, double cMin, double cMax) {
    TSlot row = TSlot.metric(slot * MM).orElseThrow();
    assertEquals((hMin - cMax) * MM, row.throatLeast());
    assertEquals((hMax - cMin) * MM, row.throatMost());
  }
}
