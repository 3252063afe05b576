package org.jawroom.placement.set;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jawroom.geometry.IntervalSet;
import org.jawroom.geometry.Length;
import org.jawroom.placement.space.Window;

/**
 * The rows in which every margin, and every gap between neighbours less the spacing, is at least a
 * given length.
 *
 * <p>Built from the right: for each multiset of vises and each footing of the leftmost of them, the
 * greatest position of that one at which the others stand to its right. A vise that stands farther
 * left never hinders those to its right, so nothing else about them matters. It suffices to keep
 * neighbours apart: between two vises with a third between them lies at least its body.
 */
final class RowsOfLeast {
  private static final long NOWHERE = Long.MIN_VALUE;
  private static final long BEYOND = 2 * Length.ENDLESS;

  private final List<Footing> footings;
  private final int[] counts;
  private final long spacing;
  private final long least;

  /** The free positions of each footing along the slots. */
  private final List<IntervalSet> free;

  /** The weight of each kind in the number of a multiset. */
  private final int[] weights;

  /** The number of the multiset of all vises. */
  private final int all;

  /** By multiset and footing of its leftmost vise; {@link #NOWHERE} if the rest does not fit. */
  private final long[][] greatest;

  RowsOfLeast(List<Footing> footings, int[] counts, long spacing, long least) {
    this.footings = footings;
    this.counts = counts;
    this.spacing = spacing;
    this.least = least;
    this.free =
        footings.stream().map(footing -> footing.space().along(least, Window.EVERYWHERE)).toList();
    this.weights = new int[counts.length];
    int weight = 1;
    for (int kind = 0; kind < counts.length; kind++) {
      weights[kind] = weight;
      weight *= counts[kind] + 1;
    }
    this.all = weight - 1;
    this.greatest = new long[weight][];
    for (int multiset = 1; multiset < weight; multiset++) {
      greatest[multiset] = nowhere();
      for (int kind = 0; kind < counts.length; kind++) {
        if (holds(multiset, kind)) {
          stand(kind, greatest[multiset - weights[kind]], greatest[multiset]);
        }
      }
    }
  }

  /** Whether there is one. */
  boolean exist() {
    return all == 0 || Arrays.stream(greatest[all]).anyMatch(position -> position != NOWHERE);
  }

  /**
   * The row whose kinds come first in the order of the rows, then the first footings from left to
   * right; what is left over is spread evenly before, between and behind the vises as far as free
   * positions allow.
   */
  List<RowSearch.Stand> first() {
    int[] kinds = kinds();
    long[][] most = new long[kinds.length + 1][];
    for (int at = kinds.length - 1; at >= 0; at--) {
      most[at] = nowhere();
      stand(kinds[at], most[at + 1], most[at]);
    }
    List<RowSearch.Stand> stands = new ArrayList<>();
    int before = -1;
    long position = NOWHERE;
    for (int at = 0; at < kinds.length; at++) {
      int next = 0;
      long from = from(next, before, position);
      while (from > most[at][next]) {
        next++;
        from = from(next, before, position);
      }
      long even = from + (most[at][next] - from) / (kinds.length - at + 1);
      position = Math.min(first(free.get(next), even), most[at][next]);
      before = next;
      stands.add(new RowSearch.Stand(footings.get(next), position));
    }
    return stands;
  }

  /** The least position of a footing with another before it at a position, or with none. */
  private long from(int footing, int before, long position) {
    return first(free.get(footing), before < 0 ? NOWHERE : position + apart(before, footing));
  }

  /** The kinds from left to right, first in the order of the rows among all rows there are. */
  private int[] kinds() {
    int[] kinds = new int[Arrays.stream(counts).sum()];
    int left = all;
    long[] before = null;
    for (int at = 0; at < kinds.length; at++) {
      long[] earliest = null;
      for (int kind = 0; earliest == null; kind++) {
        if (holds(left, kind)) {
          earliest = earliest(kind, left, before);
          kinds[at] = kind;
        }
      }
      before = earliest;
      left -= weights[kinds[at]];
    }
    return kinds;
  }

  /**
   * The least position of each footing of a kind, the leftmost of a multiset, to the right of the
   * vise before; null if the others then do not stand to its right.
   *
   * @param before the least positions of the vise before by footing; null for the first
   */
  private long[] earliest(int kind, int multiset, long[] before) {
    long[] earliest = nowhere();
    boolean some = false;
    for (int i = 0; i < earliest.length; i++) {
      if (footings.get(i).kind() == kind) {
        long from = first(free.get(i), before == null ? NOWHERE : leastAfter(before, i));
        if (from <= greatest[multiset][i]) {
          earliest[i] = from;
          some = true;
        }
      }
    }
    return some ? earliest : null;
  }

  private long leastAfter(long[] before, int footing) {
    long from = Long.MAX_VALUE;
    for (int i = 0; i < before.length; i++) {
      if (before[i] != NOWHERE) {
        from = Math.min(from, before[i] + apart(i, footing));
      }
    }
    return from;
  }

  /**
   * Fills in the greatest position of each footing of a kind to the left of the next vise.
   *
   * @param next those of the next vise by footing; null for the last
   */
  private void stand(int kind, long[] next, long[] into) {
    for (int i = 0; i < into.length; i++) {
      if (footings.get(i).kind() == kind) {
        into[i] = last(free.get(i), next == null ? BEYOND : mostBefore(i, next));
      }
    }
  }

  private long mostBefore(int footing, long[] next) {
    long most = NOWHERE;
    for (int i = 0; i < next.length; i++) {
      if (next[i] != NOWHERE) {
        most = Math.max(most, next[i] - apart(footing, i));
      }
    }
    return most;
  }

  /** The least distance of the origins of two neighbours. */
  private long apart(int footing, int next) {
    return footings.get(footing).touching(footings.get(next)) + spacing + least;
  }

  private boolean holds(int multiset, int kind) {
    return multiset / weights[kind] % (counts[kind] + 1) > 0;
  }

  private long[] nowhere() {
    long[] positions = new long[footings.size()];
    Arrays.fill(positions, NOWHERE);
    return positions;
  }

  /** The least point from a position on; above every position if there is none. */
  private static long first(IntervalSet free, long from) {
    long[] ends = free.ends();
    for (int i = 0; i < ends.length; i += 2) {
      if (from <= ends[i + 1]) {
        return Math.max(from, ends[i]);
      }
    }
    return Long.MAX_VALUE;
  }

  /** The greatest point up to a position; {@link #NOWHERE} if there is none. */
  private static long last(IntervalSet free, long to) {
    long[] ends = free.ends();
    for (int i = ends.length - 2; i >= 0; i -= 2) {
      if (ends[i] <= to) {
        return Math.min(to, ends[i + 1]);
      }
    }
    return NOWHERE;
  }
}
