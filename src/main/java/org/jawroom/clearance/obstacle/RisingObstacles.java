package org.jawroom.clearance.obstacle;

import java.util.Arrays;

/**
 * Sorts obstacles by ascending a and drops most dominated ones (nowhere nearer than another one).
 * The layout is that of {@link Obstacles#within}.
 */
final class RisingObstacles {
  private static final int STRIDE = Obstacles.STRIDE;

  /** Insertion sort is used up to this many. */
  private static final int FEW = 16;

  private static final long[] NONE = {};

  private RisingObstacles() {}

  /**
   * Sorts the obstacles in the first {@code count} longs of {@code found}, which is overwritten.
   */
  static long[] of(long[] found, int count) {
    if (count == 0) {
      return NONE;
    }
    return count <= FEW * STRIDE ? few(found, count) : many(found, count);
  }

  /** Sorts in place. */
  private static long[] few(long[] found, int count) {
    int end = STRIDE;
    for (int next = STRIDE; next < count; next += STRIDE) {
      long a = found[next];
      int at = end;
      while (at > 0 && found[at - STRIDE] > a) {
        at -= STRIDE;
      }
      if (!isCovered(found, next, found, at)) {
        insert(found, next, at, end);
        end += STRIDE;
      }
    }
    return end == found.length ? found : Arrays.copyOf(found, end);
  }

  /**
   * Moves the obstacle at {@code next} to {@code at} and shifts those from there to {@code end} up.
   */
  private static void insert(long[] found, int next, int at, int end) {
    long a = found[next];
    long b = found[next + 1];
    long c = found[next + 2];
    long d = found[next + 3];
    long f = found[next + 4];
    for (int i = end - 1; i >= at; i--) {
      found[i + STRIDE] = found[i];
    }
    found[at] = a;
    found[at + 1] = b;
    found[at + 2] = c;
    found[at + 3] = d;
    found[at + 4] = f;
  }

  private static long[] many(long[] found, int count) {
    int[] order = new int[count / STRIDE];
    for (int i = 0; i < order.length; i++) {
      order[i] = i * STRIDE;
    }
    sort(found, order, order.clone(), 0, order.length);
    long[] rising = new long[count];
    int end = 0;
    for (int at : order) {
      if (!isCovered(found, at, rising, end)) {
        System.arraycopy(found, at, rising, end, STRIDE);
        end += STRIDE;
      }
    }
    return end == count ? rising : Arrays.copyOf(rising, end);
  }

  /**
   * Merge sort of the indices {@code from} to {@code to} (exclusive) by the a of their obstacles.
   *
   * @param of must equal {@code into} on entry; used as scratch space
   */
  private static void sort(long[] found, int[] into, int[] of, int from, int to) {
    if (to - from <= FEW) {
      insertAll(found, into, from, to);
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

  private static void insertAll(long[] found, int[] order, int from, int to) {
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

  /**
   * Whether an obstacle is dominated by one of the first of {@code others}.
   *
   * @param end how many longs of those to compare; none of them has a greater a
   */
  private static boolean isCovered(long[] some, int at, long[] others, int end) {
    long b = some[at + 1];
    long c = some[at + 2];
    long d = some[at + 3];
    long f = some[at + 4];
    for (int i = 0; i < end; i += STRIDE) {
      if (b <= others[i + 1] && others[i + 2] <= c && d <= others[i + 3] && others[i + 4] <= f) {
        return true;
      }
    }
    return false;
  }
}
