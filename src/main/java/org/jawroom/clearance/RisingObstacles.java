package org.jawroom.clearance;

import java.util.Arrays;

/** Puts obstacles in the order in which a rises; the layout is that of {@link Obstacles#within}. */
final class RisingObstacles {
  private static final int STRIDE = Obstacles.STRIDE;

  /** Up to so many are sorted by insertion: most vises meet few. */
  private static final int FEW = 24;

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
    if (order.length <= FEW) {
      insert(found, order);
    } else {
      merge(found, order, order.clone(), 0, order.length);
    }
    return once(found, order);
  }

  /** Sorts where obstacles begin, by what a they begin with. */
  private static void insert(long[] found, int[] order) {
    for (int i = 1; i < order.length; i++) {
      int moved = order[i];
      int at = i;
      while (at > 0 && found[order[at - 1]] > found[moved]) {
        order[at] = order[at - 1];
        at--;
      }
      order[at] = moved;
    }
  }

  /** The same of {@code from} to {@code to} of {@code into}, as which {@code of} begins. */
  private static void merge(long[] found, int[] into, int[] of, int from, int to) {
    if (to - from < 2) {
      return;
    }
    int middle = (from + to) >>> 1;
    merge(found, of, into, from, middle);
    merge(found, of, into, middle, to);
    int one = from;
    int other = middle;
    for (int at = from; at < to; at++) {
      boolean first = other == to || one < middle && found[of[one]] <= found[of[other]];
      into[at] = first ? of[one++] : of[other++];
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
