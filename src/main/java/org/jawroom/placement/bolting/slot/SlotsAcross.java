package org.jawroom.placement.bolting.slot;

import java.util.Arrays;
import org.jawroom.clearance.Certainty;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.IntervalSet;

/**
 * The slots of a table seen across them: at which positions each serves an anchor. An anchor is
 * given by the ends of where it may stand with the vise at the origin; all limits are closed.
 * Half-nanometres.
 */
final class SlotsAcross {
  private static final long[] EVERYWHERE = {Interval.ALL.lo(), Interval.ALL.hi()};

  /** A slot serves an anchor from least − its high end up to most − its low end. */
  private final long[] least;

  private final long[] most;

  /**
   * The slots with those centre lines.
   *
   * @param certainty whether a slot must serve wherever its centre line may lie, or anywhere
   */
  SlotsAcross(Interval[] centres, Certainty certainty) {
    boolean always = certainty == Certainty.AT_WORST;
    this.least = new long[centres.length];
    this.most = new long[centres.length];
    for (int slot = 0; slot < centres.length; slot++) {
      least[slot] = always ? centres[slot].hi() : centres[slot].lo();
      most[slot] = always ? centres[slot].lo() : centres[slot].hi();
    }
  }

  int count() {
    return least.length;
  }

  /** The least position at which a slot serves an anchor. */
  long least(int slot, long anchorHi) {
    return least[slot] - anchorHi;
  }

  /** The greatest; below the least if the slot serves nowhere. */
  long most(int slot, long anchorLo) {
    return most[slot] - anchorLo;
  }

  /**
   * The positions at which each anchor stands in some slot.
   *
   * @param anchors low and high end of each; at least one
   */
  IntervalSet held(long[] anchors) {
    IntervalSet held = served(anchors, 0);
    for (int i = 2; i < anchors.length; i += 2) {
      if (anchors[i] != anchors[i - 2] || anchors[i + 1] != anchors[i - 1]) {
        held = held.meet(served(anchors, i));
      }
    }
    return held;
  }

  private IntervalSet served(long[] anchors, int at) {
    long[] ends = new long[2 * least.length];
    int count = 0;
    for (int slot = 0; slot < least.length; slot++) {
      long lo = least(slot, anchors[at + 1]);
      long hi = most(slot, anchors[at]);
      if (lo <= hi) {
        ends[count++] = lo;
        ends[count++] = hi;
      }
    }
    return IntervalSet.union(ends, count);
  }

  /**
   * The positions in each combination of slots that the anchors can occupy at the same time, as low
   * and high ends, without duplicates.
   */
  long[] inEachCombination(long[] anchors) {
    long[] held = EVERYWHERE;
    for (int i = 0; i < anchors.length; i += 2) {
      long[] narrower = new long[held.length * least.length];
      int count = 0;
      for (int at = 0; at < held.length; at += 2) {
        for (int slot = 0; slot < least.length; slot++) {
          long lo = Math.max(held[at], least(slot, anchors[i + 1]));
          long hi = Math.min(held[at + 1], most(slot, anchors[i]));
          if (lo <= hi && !contains(narrower, count, lo, hi)) {
            narrower[count++] = lo;
            narrower[count++] = hi;
          }
        }
      }
      held = Arrays.copyOf(narrower, count);
    }
    return held;
  }

  private static boolean contains(long[] ends, int count, long lo, long hi) {
    for (int i = 0; i < count; i += 2) {
      if (ends[i] == lo && ends[i + 1] == hi) {
        return true;
      }
    }
    return false;
  }
}
