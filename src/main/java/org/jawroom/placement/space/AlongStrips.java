package org.jawroom.placement.space;

import java.util.ArrayList;
import java.util.List;
import org.jawroom.clearance.obstacle.Obstacles;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.IntervalSet;

/**
 * The positions p along strips for which some q across them is free.
 *
 * <p>If (p, q) is free, so is (p, q') with q' the least q reached by going down from q: the lower
 * side of the strip, or the far side of an obstacle. The free p at each such q are what the
 * obstacles there leave over; together they are all.
 */
final class AlongStrips {
  private static final int STRIDE = Obstacles.STRIDE;

  private final Strips strips;
  private final Walls walls;
  private final long[] near;
  private final long margin;

  /**
   * Free where the margin is at least {@code margin}.
   *
   * @param near obstacles in ascending order of a
   */
  AlongStrips(Strips strips, Walls walls, long[] near, long margin) {
    this.strips = strips;
    this.walls = walls;
    this.near = near;
    this.margin = margin;
  }

  IntervalSet within(Window window) {
    long pLo = Math.max(strips.pLo(window), walls.pLeast + margin);
    long pHi = Math.min(strips.pHi(window), walls.pMost - margin);
    List<Interval> free = new ArrayList<>();
    for (int i = 0; i < strips.q.length && pLo <= pHi; i += 2) {
      long qLo = Math.max(strips.q[i], Math.max(strips.qLo(window), walls.qLeast + margin));
      long qHi = Math.min(strips.q[i + 1], Math.min(strips.qHi(window), walls.qMost - margin));
      if (qLo <= qHi) {
        addFreeAt(qLo, pLo, pHi, free);
        for (int at = 0; at < near.length; at += STRIDE) {
          long q = near[at + 3] + margin;
          if (near[at + 4] < margin && qLo < q && q <= qHi) {
            addFreeAt(q, pLo, pHi, free);
          }
        }
      }
    }
    return IntervalSet.union(free);
  }

  /** Obstacles forbid open intervals, so that a point between two that touch is free. */
  private void addFreeAt(long q, long pLo, long pHi, List<Interval> free) {
    long from = pLo;
    for (int i = 0; i < near.length && from <= pHi; i += STRIDE) {
      long a = near[i] - margin;
      long b = near[i + 1] + margin;
      if (near[i + 4] < margin
          && a < b
          && near[i + 2] - margin < q
          && q < near[i + 3] + margin
          && from < b) {
        if (from <= a) {
          free.add(Interval.of(from, Math.min(a, pHi)));
        }
        from = b;
      }
    }
    if (from <= pHi) {
      free.add(Interval.of(from, pHi));
    }
  }
}
