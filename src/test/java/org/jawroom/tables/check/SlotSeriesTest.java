package org.jawroom.tables.check;

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

class SlotSeriesTest {
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
    SlotSeries.Row row = SlotSeries.metric(throat * Length.MM).orElseThrow();
    List<Long> expected =
        Arrays.stream(pitches.split(" ")).map(p -> Long.parseLong(p) * Length.MM).toList();
    assertEquals(expected, row.pitches());
    assertEquals(throat * Length.MM, row.width());
    assertEquals(h12 * MICROMETRE, row.widest() - row.width());
    assertTrue(SlotSeries.metric(row.widest()).isPresent());
    assertTrue(SlotSeries.metric(row.widest() + 1).isEmpty());
    assertTrue(SlotSeries.metric(row.width() - 1).isEmpty());
  }

  @Test
  void metric_rows_areThirteen() {
    assertEquals(13, SlotSeries.METRIC.size());
  }

  /**
   * ANSI/ASME B5.1M-1985, transcribed from a published table of it: throat in thousandths; + 0.010
   * in.
   */
  @ParameterizedTest
  @ValueSource(ints = {282, 344, 438, 562, 688, 812, 1062, 1312, 1562})
  void inchThroat_eachRow_isAsPublished(int mils) {
    long mil = Length.INCH / 1000;
    assertTrue(SlotSeries.INCH_THROATS.contains(mils * mil));
    assertTrue(SlotSeries.isInchThroat((mils - 1) * mil));
    assertFalse(SlotSeries.isInchThroat((mils - 1) * mil - 1));
    assertTrue(SlotSeries.isInchThroat((mils + 10) * mil));
    assertFalse(SlotSeries.isInchThroat((mils + 10) * mil + 1));
  }

  @Test
  void inchThroats_areNine() {
    assertEquals(9, SlotSeries.INCH_THROATS.size());
  }

  /** The same sizes as fractions of an inch: common practice, no source. */
  @ParameterizedTest
  @ValueSource(ints = {18, 22, 28, 36, 44, 52, 68, 84, 100})
  void inchThroat_asSixtyFourths_isInTheSeries(int sixtyFourths) {
    assertTrue(SlotSeries.isInchThroat(sixtyFourths * Length.INCH / 64));
  }

  /** Widths met in shops that are in neither series. */
  @ParameterizedTest
  @ValueSource(longs = {15_875, 16_000, 20_000, 4_999})
  void width_offBothSeries_isInNeither(long micrometres) {
    assertTrue(SlotSeries.metric(micrometres * MICROMETRE).isEmpty());
    assertFalse(SlotSeries.isInchThroat(micrometres * MICROMETRE));
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
    SlotSeries.Row row = SlotSeries.metric(throat * Length.MM).orElseThrow();
    long off = tolerance * MICROMETRE;
    assertTrue(row.hasPitch(pitch * Length.MM + off));
    assertTrue(row.hasPitch(pitch * Length.MM - off));
    assertFalse(row.hasPitch(pitch * Length.MM + off + 1));
    assertFalse(row.hasPitch(pitch * Length.MM - off - 1));
  }
}
