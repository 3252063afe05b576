package org.jawroom.standards;

import java.util.List;
import java.util.Optional;
import org.jawroom.geometry.Length;

/**
 * A coarse inch thread of a stud for T-slots.
 *
 * @param sixteenths nominal diameter, sixteenths of an inch
 * @param perInch threads per inch
 * @param proofLoad of a stud of grade 5, lbf
 * @param washer nominal thickness of the plain washer, thousandths of an inch
 */
public record InchThread(int sixteenths, int perInch, int proofLoad, int washer) {

  /**
   * The coarse threads that ANSI/ASME B5.1M-1985 lists for T-bolts, transcribed, ascending. Proof
   * loads: SAE J429, grade 5, transcribed from a table that reprints it. Washers: ASME B18.21.1,
   * type A plain, narrow, from memory, no source seen.
   */
  public static final List<InchThread> B5_1M =
      List.of(
          new InchThread(4, 20, 2_700, 65),
          new InchThread(5, 18, 4_450, 65),
          new InchThread(6, 16, 6_600, 65),
          new InchThread(8, 13, 12_100, 95),
          new InchThread(10, 11, 19_200, 95),
          new InchThread(12, 10, 28_400, 134),
          new InchThread(16, 8, 51_500, 134),
          new InchThread(20, 7, 71_700, 165),
          new InchThread(24, 6, 104_000, 165));

  /**
   * The thickest stud that may stand in for a metric bolt of diameter {@code d}: one not thicker
   * than {@code d}. Whatever was computed for d holds for it: the holes that pass d pass it, the
   * box that bolt and hole need, (hole + d) / 2 either way and 2d high, contains its own, and the
   * nut leaves no less of the slot. A thicker one, were it by 0.7 mm, as 1/2-13 for M12, is none of
   * that.
   *
   * @param d half-nanometres
   */
  public static Optional<InchThread> standInFor(long d) {
    return B5_1M.stream().filter(stud -> stud.diameter() <= d).reduce((one, next) -> next);
  }

  /**
   * The threads that enter a slot but are thicker than {@code d}, so that nothing computed for d
   * holds for them.
   *
   * @param d half-nanometres, {@code slot} width of the slot likewise
   */
  public static List<InchThread> notCoveredBy(long d, long slot) {
    return B5_1M.stream().filter(stud -> stud.diameter() > d && stud.diameter() < slot).toList();
  }

  /** Nominal diameter, half-nanometres. */
  public long diameter() {
    return sixteenths * (Length.INCH / 16);
  }

  /** Thickness of the washer, half-nanometres. */
  public long washerThickness() {
    return washer * (Length.INCH / 1000);
  }

  /** {@code 3/8-16}, {@code 1-1/4-7}. */
  public String name() {
    return size(sixteenths) + "-" + perInch;
  }

  /**
   * T = K F d with 75 % of the proof load and K 0.15 as for metric bolts, see {@link Tightening};
   * whole lbf ft, rounded down.
   */
  public long startingTorque() {
    // Divides by percent, by hundredths of K, by sixteenths, and by inches per foot.
    return (long) proofLoad
        * Tightening.SHARE_PERCENT
        * Tightening.OILED
        * sixteenths
        / (100L * 100 * 16 * 12);
  }

  private static String size(int sixteenths) {
    int whole = sixteenths / 16;
    int parts = sixteenths % 16;
    if (parts == 0) {
      return Integer.toString(whole);
    }
    int divisor = Integer.lowestOneBit(parts);
    return (whole == 0 ? "" : whole + "-") + parts / divisor + "/" + 16 / divisor;
  }
}
