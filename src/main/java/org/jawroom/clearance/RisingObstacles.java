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
   * The obstacles up to {@code count} longs of {@code found}, which it puts in another order; what
   * is there twice, while cutting and while loading, as a rule once.
   */
  static long[] of(long[] found, int count) {
    if (count == 0) {
      return NONE;
    }
    if (count <= FEW * STRIDE) {
      insert(found, count);
    } else {
      merge(found, found.clone(), 0, count / STRIDE);
    }
    return Arrays.copyOf(found, once(found, count));
  }

  private static void insert(long[] found, int count) {
    long[] moved = new long[STRIDE];
    for (int i = STRIDE; i < count; i += STRIDE) {
      int at = i;
      while (at > 0 && found[at - STRIDE] > found[i]) {
        at -= STRIDE;
      }
      if (at < i) {
        System.arraycopy(found, i, moved, 0, STRIDE);
        System.arraycopy(found, at, found, at + STRIDE, i - at);
        System.arraycopy(moved, 0, found, at, STRIDE);
      }
    }
  }

  /** Sorts obstacles {@code from} to {@code to} of {@code into}, as which {@code of} begins. */
  private static void merge(long[] into, long[] of, int from, int to) {
    if (to - from < 2) {
      return;
    }
    int middle = (from + to) >>> 1;
    merge(of, into, from, middle);
    merge(of, into, middle, to);
    int one = from * STRIDE;
    int other = middle * STRIDE;
    for (int at = from * STRIDE; at < to * STRIDE; at += STRIDE) {
      boolean first = other == to * STRIDE || one < middle * STRIDE && of[one] <= of[other];
      System.arraycopy(of, first ? one : other, into, at, STRIDE);
      if (first) {
        one += STRIDE;
      } else {
        other += STRIDE;
      }
    }
  }

  /** Takes out what is like the one before it; how many longs are left. */
  private static int once(long[] sorted, int all) {
    int count = STRIDE;
    for (int i = STRIDE; i < all; i += STRIDE) {
      if (sorted[i] != sorted[count - STRIDE] || !alike(sorted, i, count - STRIDE)) {
        if (i > count) {
          System.arraycopy(sorted, i, sorted, count, STRIDE);
        }
        count += STRIDE;
      }
    }
    return count;
  }

  private static boolean alike(long[] sorted, int one, int other) {
    return Arrays.equals(sorted, one, one + STRIDE, sorted, other, other + STRIDE);
  }
}
