package org.jawroom.plausibility;

import java.util.Arrays;
import org.jawroom.geometry.Length;

/**
 * Where a vise's origin may stand along one axis, as closed runs, rising and apart;
 * half-nanometres.
 */
final class Runs {
  static final Runs EVERYWHERE = new Runs(-Length.ENDLESS, Length.ENDLESS);

  /** The low and the high end of each run in turn. */
  private final long[] ends;

  private Runs(long... ends) {
    this.ends = ends;
  }

  boolean isEmpty() {
    return ends.length == 0;
  }

  /**
   * What of these lies within {@code reach} of some line, all lines shifted by {@code shift}.
   *
   * @param lines rising
   */
  Runs meeting(long[] lines, long shift, long reach) {
    long[] common = new long[ends.length + 2 * lines.length];
    int next = 0;
    int run = 0;
    int line = 0;
    while (line < lines.length) {
      long lo = lines[line] + shift - reach;
      // Lines whose reaches overlap make one window.
      while (line + 1 < lines.length && lines[line + 1] - lines[line] <= 2 * reach) {
        line++;
      }
      long hi = lines[line++] + shift + reach;
      while (run < ends.length && ends[run + 1] < lo) {
        run += 2;
      }
      for (int met = run; met < ends.length && ends[met] <= hi; met += 2) {
        common[next++] = Math.max(ends[met], lo);
        common[next++] = Math.min(ends[met + 1], hi);
      }
    }
    return new Runs(Arrays.copyOf(common, next));
  }

  /**
   * The least by which a base from {@code lo} to {@code hi} beside its origin hangs over either
   * edge of a table that reaches {@code half} to both sides.
   */
  long leastOverhang(long lo, long hi, long half) {
    // Overhang falls and then rises along a run: it is least at an end, or in the middle.
    long middle = -(lo + hi) / 2;
    long least = Long.MAX_VALUE;
    for (int run = 0; run < ends.length; run += 2) {
      long place = Math.max(ends[run], Math.min(ends[run + 1], middle));
      least = Math.min(least, Math.max(0, Math.max(-half - lo - place, hi + place - half)));
    }
    return least;
  }
}
