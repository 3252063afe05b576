package org.jawroom.tables.check;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.LongStream;
import org.jawroom.geometry.Length;

/**
 * The published series of T-slots: the metric one of ISO 299 with the pitches of BS 2485, and the
 * inch throats of ANSI/ASME B5.1M.
 *
 * <p>A width belongs to a series if it lies between the nominal width and the widest that an
 * ordinary, holding slot may be: H12 (ISO 286) in millimetres, 0.010 in in inches. Inch widths are
 * published to three places, so that 11/16 in counts as 0.688: they may be 0.001 in less. A pitch
 * may be off by what BS 2485 allows. No inch pitches are transcribed here.
 */
final class SlotSeries {

  /**
   * One width of the metric series.
   *
   * @param width nominal, {@code widest} with its tolerance
   * @param pitches rising, those included that BS 2485 puts in brackets as weak
   */
  record Row(long width, long widest, List<Long> pitches) {

    boolean hasWidth(long measured) {
      return width <= measured && measured <= widest;
    }

    boolean hasPitch(long measured) {
      return pitches.stream()
          .anyMatch(pitch -> Math.abs(measured - pitch) <= pitchTolerance(pitch));
    }
  }

  private static final long MICROMETRE = Length.MM / 1000;
  private static final long MIL = Length.INCH / 1000;

  static final List<Row> METRIC =
      List.of(
          row(5, 120, 20, 25, 32),
          row(6, 120, 25, 32, 40),
          row(8, 150, 32, 40, 50),
          row(10, 150, 40, 50, 63),
          row(12, 180, 40, 50, 63, 80),
          row(14, 180, 50, 63, 80, 100),
          row(18, 180, 63, 80, 100, 125),
          row(22, 210, 80, 100, 125, 160),
          row(28, 210, 100, 125, 160, 200),
          row(36, 250, 125, 160, 200, 250),
          row(42, 250, 160, 200, 250, 320),
          row(48, 250, 200, 250, 320, 400),
          row(54, 300, 250, 320, 400, 500));

  /** Throat widths of the inch series. */
  static final List<Long> INCH_THROATS =
      LongStream.of(282, 344, 438, 562, 688, 812, 1062, 1312, 1562)
          .map(mils -> mils * MIL)
          .boxed()
          .toList();

  private SlotSeries() {}

  /** The row of the metric series to which a measured width belongs. */
  static Optional<Row> metric(long width) {
    return METRIC.stream().filter(row -> row.hasWidth(width)).findFirst();
  }

  static boolean isInchThroat(long width) {
    return INCH_THROATS.stream()
        .anyMatch(throat -> throat - MIL <= width && width <= throat + 10 * MIL);
  }

  /** Whether a pitch is published for any width. */
  static boolean hasPitch(long pitch) {
    return METRIC.stream().anyMatch(row -> row.hasPitch(pitch));
  }

  private static Row row(int width, int over, int... pitches) {
    return new Row(
        width * Length.MM,
        width * Length.MM + over * MICROMETRE,
        Arrays.stream(pitches).mapToObj(pitch -> pitch * Length.MM).toList());
  }

  private static long pitchTolerance(long pitch) {
    if (pitch <= 25 * Length.MM) {
      return 200 * MICROMETRE;
    }
    if (pitch <= 100 * Length.MM) {
      return 300 * MICROMETRE;
    }
    return pitch <= 250 * Length.MM ? 500 * MICROMETRE : 800 * MICROMETRE;
  }
}
