package org.jawroom.report.limits;

import java.util.Arrays;

/** Margins in half-nanometres, any number of them; quantiles are exact. */
public final class Margins {
  private static final int FIRST_ROOM = 4;

  private long[] margins = new long[FIRST_ROOM];
  private int count;
  private boolean sorted = true;

  public void add(long margin) {
    if (count == margins.length) {
      margins = Arrays.copyOf(margins, 2 * count);
    }
    margins[count++] = margin;
    sorted = false;
  }

  public int count() {
    return count;
  }

  /** The smallest of them; there must be one, as for the other questions below. */
  public long least() {
    return ranked(1);
  }

  public long greatest() {
    return ranked(count);
  }

  /**
   * The quantile at {@code part} of {@code of}: the least margin that at least so many of them do
   * not exceed (nearest rank; type 1 of R. J. Hyndman and Y. Fan, "Sample Quantiles in Statistical
   * Packages", The American Statistician 50 (4), 1996, 361–365). It is one of the margins, never a
   * number between two; of two in the middle the median is the smaller.
   */
  public long quantile(int part, int of) {
    long rank = -Math.floorDiv(-((long) count * part), (long) of);
    return ranked((int) Math.max(1, rank));
  }

  public long median() {
    return quantile(1, 2);
  }

  /** How many are {@code from} or more, and less than {@code to}. */
  public int countWithin(long from, long to) {
    return countBelow(to) - countBelow(from);
  }

  private int countBelow(long bound) {
    sort();
    int low = 0;
    int high = count;
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (margins[middle] < bound) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low;
  }

  /** The margin of that rank in rising order, from 1. */
  private long ranked(int rank) {
    if (count == 0) {
      throw new IllegalStateException("no margins");
    }
    sort();
    return margins[rank - 1];
  }

  private void sort() {
    if (!sorted) {
      Arrays.sort(margins, 0, count);
      sorted = true;
    }
  }
}
