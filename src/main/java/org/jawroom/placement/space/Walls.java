package org.jawroom.placement.space;

import org.jawroom.clearance.obstacle.Obstacles;
import org.jawroom.geometry.Length;

/**
 * The walls around strips of positions: the distance to the nearest one bounds the margin above.
 */
public final class Walls {
  /** The margin is p − pLeast or less; the other three likewise. */
  final long pLeast;

  final long pMost;
  final long qLeast;
  final long qMost;
  private final Strips strips;

  private Walls(Strips strips, Obstacles obstacles) {
    this.strips = strips;
    boolean alongX = strips.alongX;
    this.pLeast = alongX ? obstacles.left() : obstacles.front();
    this.pMost = alongX ? obstacles.right() : obstacles.rear();
    this.qLeast = alongX ? obstacles.front() : obstacles.left();
    this.qMost = alongX ? obstacles.rear() : obstacles.right();
  }

  static Walls of(Strips strips, Obstacles obstacles) {
    return new Walls(strips, obstacles);
  }

  /** An upper bound on the margin of every position. */
  long bound() {
    long alongQ = Long.MIN_VALUE;
    for (int i = 0; i < strips.q.length; i += 2) {
      alongQ = Math.max(alongQ, mostBetween(strips.q[i], strips.q[i + 1], qLeast, qMost));
    }
    long alongP = mostBetween(strips.pLo, strips.pHi, pLeast, pMost);
    return Math.min(Length.ENDLESS, Math.min(alongP, alongQ));
  }

  /** The margin with respect to the walls alone. */
  long margin(long p, long q) {
    return Math.min(Length.ENDLESS, Math.min(between(p, pLeast, pMost), between(q, qLeast, qMost)));
  }

  /**
   * The position in {@code window} farthest from the walls, ties to the first strip; null if there
   * is none.
   */
  Place likely(Window window) {
    long pLo = strips.pLo(window);
    long pHi = strips.pHi(window);
    if (pLo > pHi) {
      return null;
    }
    long p = middle(pLo, pHi, pLeast, pMost);
    long alongP = between(p, pLeast, pMost);
    long best = 0;
    long most = Long.MIN_VALUE;
    for (int i = 0; i < strips.q.length; i += 2) {
      long qLo = Math.max(strips.q[i], strips.qLo(window));
      long qHi = Math.min(strips.q[i + 1], strips.qHi(window));
      if (qLo <= qHi) {
        long q = middle(qLo, qHi, qLeast, qMost);
        long margin = Math.min(alongP, between(q, qLeast, qMost));
        if (margin > most) {
          most = margin;
          best = q;
        }
      }
    }
    return most == Long.MIN_VALUE ? null : strips.place(p, best);
  }

  /** The whole number in [lo, hi] that maximizes min(at − before, after − at). */
  static long middle(long lo, long hi, long before, long after) {
    long middle = before + Math.floorDiv(after - before, 2);
    return Math.max(lo, Math.min(hi, middle));
  }

  private static long between(long at, long before, long after) {
    return Math.min(at - before, after - at);
  }

  /** The maximum of min(at − least, most − at) over whole {@code at} in [lo, hi]. */
  private static long mostBetween(long lo, long hi, long least, long most) {
    return Math.min(Math.floorDiv(most - least, 2), Math.min(hi - least, most - lo));
  }
}
