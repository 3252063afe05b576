package org.jawroom.clearance;

import java.util.Arrays;

/** Puts obstacles in the order in which a rises; the layout is that of {@link Obstacles#within}. */
final class RisingObstacles {
  private static final int STRIDE = Obstacles.STRIDE;

  /** Up to so many are sorted by insertion. */
  private static final int FEW = 16;

  private static final long[] NONE = {};

  private RisingObstacles() {}

  /**
   * The obstacles up to {@code count} longs of {@code found}; what is there twice, while cutting
   * and while loading, as a rule once.
   */
  static long[] of(long[] found, int count) {
    if (count == 0) {
      return NONE;
    }
    int[] order = new int[count / STRIDE];
    for (int i = 0; i < order.length; i++) {
      order[i] = i * STRIDE;
    }
    sort(found, order, order.length <= FEW ? order : order.clone(), 0, order.length);
    return once(found, order);
  }

  /**
   * Sorts {@code from} to {@code to} of where obstacles begin, by what a they begin with.
   *
   * @param of as {@code into} is before; changed, too
   */
  private static void sort(long[] found, int[] into, int[] of, int from, int to) {
    if (to - from <= FEW) {
      insert(found, into, from, to);
      return;
    }
    int middle = (from + to) >>> 1;
    sort(found, of, into, from, middle);
    sort(found, of, into, middle, to);
    int one = from;
    int other = middle;
    for (int at = from; at < to; at++) {
      boolean first = other == to || one < middle && found[of[one]] <= found[of[other]];
      into[at] = first ? of[one++] : of[other++];
    }
  }

  private static void insert(long[] found, int[] order, int from, int to) {
    for (int i = from + 1; i < to; i++) {
      int moved = order[i];
      int at = i;
      while (at > from && found[order[at - 1]] > found[moved]) {
        order[at] = order[at - 1];
        at--;
      }
      order[at] = moved;
    }
  }

  /** In that order, without what is like the one before it. */
  private static long[] once(long[] found, int[] order) {
    long[] rising = new long[order.length * STRIDE];
    int end = 0;
    for (int at : order) {
      if (end == 0 || !alike(found, at, rising, end - STRIDE)) {
        for (int i = 0; i < STRIDE; i++) {
          rising[end + i] = found[at + i];
        }
        end += STRIDE;
      }
    }
    return end == rising.length ? rising : Arrays.copyOf(rising, end);
  }

  private static boolean alike(long[] some, int one, long[] others, int other) {
    for (int i = 0; i < STRIDE; i++) {
      if (some[one + i] != others[other + i]) {
        return false;
      }
    }
    return true;
  }
}
