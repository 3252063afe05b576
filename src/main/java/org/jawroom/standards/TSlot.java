package org.jawroom.standards;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.LongStream;
import org.jawroom.geometry.Length;

/**
 * A row of the metric series of T-slots. All lengths in half-nanometres.
 *
 * <p>Sources, as reprinted (ISO 299 itself was not seen): widths after ISO 299, tolerance H12 of a
 * holding slot after ISO 286, pitches after BS 2485. Depth of the throat D1 = h − c: up to 12 mm as
 * printed in millimetres in ANSI/ASME B5.1M-1985 (5 mm: from the least of BS 2485 to the greatest
 * of B5.1M, which disagree about c); above 12 mm computed from h and c of both.
 *
 * @param width nominal width of the throat
 * @param widest nominal width plus H12: the upper limit of an ordinary holding slot
 * @param throatLeast least depth of the throat, from the table top to the underside of the lips
 * @param throatMost greatest depth of the throat
 * @param pitches ascending, including those that BS 2485 puts in brackets as weak
 */
public record TSlot(
    long width, long widest, long throatLeast, long throatMost, List<Long> pitches) {

  private static final long MICROMETRE = Length.MM / 1000;
  private static final long MIL = Length.INCH / 1000;

  public static final List<TSlot> METRIC =
      List.of(
          row(5, 120, 3.5, 7, 20, 25, 32),
          row(6, 120, 5, 8, 25, 32, 40),
          row(8, 150, 7, 11, 32, 40, 50),
          row(10, 150, 9, 14, 40, 50, 63),
          row(12, 180, 11, 17, 40, 50, 63, 80),
          row(14, 180, 12, 19, 50, 63, 80, 100),
          row(18, 180, 16, 24, 63, 80, 100, 125),
          row(22, 210, 20, 29, 80, 100, 125, 160),
          row(28, 210, 26, 36, 100, 125, 160, 200),
          row(36, 250, 33, 46, 125, 160, 200, 250),
          row(42, 250, 39, 53, 160, 200, 250, 320),
          row(48, 250, 44, 59, 200, 250, 320, 400),
          row(54, 300, 50, 66, 250, 320, 400, 500));

  /**
   * Throat widths of the inch series: ANSI/ASME B5.1M-1985, transcribed. Published to three
   * decimals, so that 11/16 in is 0.688. No inch pitches are transcribed.
   */
  public static final List<Long> INCH_THROATS =
      LongStream.of(282, 344, 438, 562, 688, 812, 1062, 1312, 1562)
          .map(mils -> mils * MIL)
          .boxed()
          .toList();

  /** The row that a measured width belongs to: nominal to widest, both included. */
  public static Optional<TSlot> metric(long width) {
    return METRIC.stream().filter(row -> row.width <= width && width <= row.widest).findFirst();
  }

  /**
   * Whether a measured width belongs to the inch series: from 0.001 in below a published width,
   * since these are rounded, to 0.010 in above it, the tolerance of a holding slot. Both ends
   * included.
   */
  public static boolean isInchThroat(long width) {
    return INCH_THROATS.stream()
        .anyMatch(throat -> throat - MIL <= width && width <= throat + 10 * MIL);
  }

  /** Whether the pitch is published for any width. */
  public static boolean isPitch(long measured) {
    return METRIC.stream().anyMatch(row -> row.hasPitch(measured));
  }

  /**
   * Whether the pitch is published for this width, within the tolerance of BS 2485, ends included.
   */
  public boolean hasPitch(long measured) {
    return pitches.stream().anyMatch(pitch -> Math.abs(measured - pitch) <= pitchTolerance(pitch));
  }

  private static TSlot row(
      int width, int over, double throatLeast, double throatMost, int... pitches) {
    return new TSlot(
        width * Length.MM,
        width * Length.MM + over * MICROMETRE,
        (long) (throatLeast * Length.MM),
        (long) (throatMost * Length.MM),
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
