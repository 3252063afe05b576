package org.jawroom.geometry;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/** A union of disjoint closed intervals in ascending order, in half-nanometres. No two touch. */
public final class IntervalSet {

  /** Alternating low and high ends. */
  private final long[] ends;

  private IntervalSet(long[] ends) {
    this.ends = ends;
  }

  /**
   * The set of the given intervals.
   *
   * @param ends alternating low and high ends
   * @throws IllegalArgumentException if they do not ascend or two intervals touch
   */
  public static IntervalSet of(long... ends) {
    if (ends.length % 2 != 0) {
      throw new IllegalArgumentException("odd number of ends");
    }
    for (int i = 1; i < ends.length; i++) {
      if (i % 2 == 0 ? ends[i - 1] >= ends[i] : ends[i - 1] > ends[i]) {
        throw new IllegalArgumentException("ends do not ascend: " + ends[i - 1] + ", " + ends[i]);
      }
    }
    return new IntervalSet(ends.clone());
  }

  /**
   * The points within {@code half} of some centre; intervals that touch or overlap are merged.
   *
   * @param centres in ascending order
   * @param shift added to every centre
   * @param half 0 or more
   */
  public static IntervalSet around(long[] centres, long shift, long half) {
    long[] ends = new long[2 * centres.length];
    int count = 0;
    for (long centre : centres) {
      long lo = centre + shift - half;
      if (count > 0 && lo <= ends[count - 1]) {
        count -= 2;
        lo = ends[count];
      }
      ends[count] = lo;
      ends[count + 1] = centre + shift + half;
      count += 2;
    }
    return new IntervalSet(cut(ends, count));
  }

  /** The points of any of the given intervals. */
  public static IntervalSet union(List<Interval> intervals) {
    List<Interval> rising = new ArrayList<>(intervals);
    rising.sort(Comparator.comparingLong(Interval::lo));
    long[] ends = new long[2 * rising.size()];
    for (int i = 0; i < ends.length; i += 2) {
      ends[i] = rising.get(i / 2).lo();
      ends[i + 1] = rising.get(i / 2).hi();
    }
    return union(ends, ends.length);
  }

  /**
   * The points of any of a few intervals.
   *
   * @param ends low and high end of each, none reversed, the intervals in any order; it is modified
   * @param count how many of the ends count
   */
  public static IntervalSet union(long[] ends, int count) {
    sort(ends, count);
    int merged = 0;
    for (int i = 0; i < count; i += 2) {
      if (merged > 0 && ends[i] <= ends[merged - 1]) {
        ends[merged - 1] = Math.max(ends[merged - 1], ends[i + 1]);
      } else {
        ends[merged++] = ends[i];
        ends[merged++] = ends[i + 1];
      }
    }
    return new IntervalSet(cut(ends, merged));
  }

  /** Sorts intervals by their low ends, by insertion: they are few or in order. */
  private static void sort(long[] ends, int count) {
    for (int i = 2; i < count; i += 2) {
      long lo = ends[i];
      long hi = ends[i + 1];
      int at = i;
      while (at > 0 && ends[at - 2] > lo) {
        ends[at] = ends[at - 2];
        ends[at + 1] = ends[at - 1];
        at -= 2;
      }
      ends[at] = lo;
      ends[at + 1] = hi;
    }
  }

  private static long[] cut(long[] ends, int count) {
    return count == ends.length ? ends : Arrays.copyOf(ends, count);
  }

  public boolean isEmpty() {
    return ends.length == 0;
  }

  /** The intersection. Touching counts, so a resulting interval may be a point. */
  public IntervalSet meet(IntervalSet other) {
    long[] both = new long[ends.length + other.ends.length];
    int count = 0;
    for (int i = 0, j = 0; i < ends.length && j < other.ends.length; ) {
      long lo = Math.max(ends[i], other.ends[j]);
      long hi = Math.min(ends[i + 1], other.ends[j + 1]);
      if (lo <= hi) {
        both[count++] = lo;
        both[count++] = hi;
      }
      if (ends[i + 1] < other.ends[j + 1]) {
        i += 2;
      } else {
        j += 2;
      }
    }
    return new IntervalSet(cut(both, count));
  }

  /** Whether one of the closed intervals contains the point. */
  public boolean contains(long point) {
    for (int i = 0; i < ends.length; i += 2) {
      if (ends[i] <= point && point <= ends[i + 1]) {
        return true;
      }
    }
    return false;
  }

  /** Alternating low and high ends; callers must not modify the array. */
  public long[] ends() {
    return ends;
  }

  @Override
  public String toString() {
    return Arrays.toString(ends);
  }
}
