package org.jawroom.clearance.obstacle;

/** Sorts obstacles by ascending a. The layout is that of {@link Obstacles#within}. */
final class RisingObstacles {
  private static final int STRIDE = Obstacles.STRIDE;

  private static final long[] NONE = {};

  private RisingObstacles() {}

  /** The obstacles in the first {@code count} longs of {@code found}, sorted. */
  static long[] of(long[] found, int count) {
    if (count == 0) {
      return NONE;
    }
    int[] order = new int[count / STRIDE];
    for (int i = 0; i < order.length; i++) {
      order[i] = i * STRIDE;
    }
    sort(found, order, order.clone(), 0, order.length);
    long[] rising = new long[count];
    for (int i = 0; i < order.length; i++) {
      System.arraycopy(found, order[i], rising, i * STRIDE, STRIDE);
    }
    return rising;
  }

  /**
   * Merge sort of the indices {@code from} to {@code to} (exclusive) by the a of their obstacles.
   *
   * @param of must equal {@code into} on entry; used as scratch space
   */
  private static void sort(long[] found, int[] into, int[] of, int from, int to) {
    if (to - from <= 1) {
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
}
