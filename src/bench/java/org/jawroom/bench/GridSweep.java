package org.jawroom.bench;

import java.util.List;
import org.jawroom.geometry.Length;
import org.jawroom.geometry.Orientation;
import org.jawroom.reference.proof.SweptBoxes;
import org.jawroom.reference.space.Rect;

/**
 * The plain way to do it: set the vise down at every place of a 1 mm grid, ends of the slots' play
 * included, and hold each of its boxes against each guard.
 */
final class GridSweep {
  private static final long STEP = Length.MM;

  /** Longs to a pair. */
  private static final int STRIDE = 10;

  private GridSweep() {}

  /** Whether nothing is hit at some place of the grid, the jaws going over all of their travel. */
  static boolean isClear(List<SweptBoxes> regions) {
    for (SweptBoxes region : regions) {
      long[] boxes = boxes(region, 0, 1);
      for (Rect places : region.places()) {
        for (long x = places.xLo(); x <= places.xHi(); x = next(x, places.xHi())) {
          for (long y = places.yLo(); y <= places.yHi(); y = next(y, places.yHi())) {
            if (isClear(boxes, x, y)) {
              return true;
            }
          }
        }
      }
    }
    return false;
  }

  /** The most openings on end, of so many 1 mm apart, at which nothing is hit at some place. */
  static int mostOpenings(List<SweptBoxes> regions, int openings) {
    int most = 0;
    for (SweptBoxes region : regions) {
      long[][] at = new long[openings][];
      for (int s = 0; s < openings; s++) {
        double share = openings == 1 ? 0 : s / (openings - 1.0);
        at[s] = boxes(region, share, share);
      }
      for (Rect places : region.places()) {
        for (long x = places.xLo(); x <= places.xHi(); x = next(x, places.xHi())) {
          for (long y = places.yLo(); y <= places.yHi(); y = next(y, places.yHi())) {
            int run = 0;
            for (long[] boxes : at) {
              run = isClear(boxes, x, y) ? run + 1 : 0;
              most = Math.max(most, run);
            }
          }
        }
      }
    }
    return most;
  }

  /** One step on, but not past the end; from the end past it. */
  private static long next(long at, long end) {
    return at == end ? end + 1 : Math.min(end, at + STEP);
  }

  /** Holds each part's box, the vise's origin at (x, y), against its guard's. */
  private static boolean isClear(long[] boxes, long x, long y) {
    for (int i = 0; i < boxes.length; i += STRIDE) {
      long alongX = Math.max(boxes[i + 4] - (x + boxes[i + 1]), x + boxes[i] - boxes[i + 5]);
      long alongY = Math.max(boxes[i + 6] - (y + boxes[i + 3]), y + boxes[i + 2] - boxes[i + 7]);
      if (Math.max(Math.max(alongX, alongY), boxes[i + 8]) < boxes[i + 9]) {
        return false;
      }
    }
    return true;
  }

  /**
   * For each pair the part's limits along x and y at the origin, swept while the jaws go from one
   * share of their travel to another, the guard's, the gap along z, and what is asked. A yardstick
   * need not be exact to the nanometre.
   */
  private static long[] boxes(SweptBoxes region, double from, double to) {
    Orientation turn = region.turn();
    long[] boxes = new long[STRIDE * region.pairs().size()];
    int i = 0;
    for (SweptBoxes.Pair pair : region.pairs()) {
      long lo =
          Math.min(
              at(pair.loClosed(), pair.loOpen(), from), at(pair.loClosed(), pair.loOpen(), to));
      long hi =
          Math.max(
              at(pair.hiClosed(), pair.hiOpen(), from), at(pair.hiClosed(), pair.hiOpen(), to));
      long x1 = turn.x(lo, pair.v().lo());
      long x2 = turn.x(hi, pair.v().hi());
      long y1 = turn.y(lo, pair.v().lo());
      long y2 = turn.y(hi, pair.v().hi());
      boxes[i] = Math.min(x1, x2);
      boxes[i + 1] = Math.max(x1, x2);
      boxes[i + 2] = Math.min(y1, y2);
      boxes[i + 3] = Math.max(y1, y2);
      boxes[i + 4] = pair.guardX().lo();
      boxes[i + 5] = pair.guardX().hi();
      boxes[i + 6] = pair.guardY().lo();
      boxes[i + 7] = pair.guardY().hi();
      boxes[i + 8] = pair.gapZ();
      boxes[i + 9] = pair.need();
      i += STRIDE;
    }
    return boxes;
  }

  private static long at(long closed, long open, double share) {
    return closed + Math.round((open - closed) * share);
  }
}
