package org.jawroom.placement.space;

import org.jawroom.clearance.obstacle.Obstacles;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Rectangle;

/**
 * How far the vise can go straight each way from its position with margin ≥ 0 all the way and its
 * bolts still in the slots reported; half-nanometres, 0 or more.
 */
public record Play(long left, long right, long front, long rear) {

  /**
   * From a position of {@code strips} at which walls and obstacles lie at least {@code off} away.
   *
   * @param near the obstacles that can bind
   * @param allowed where it must stay; holds the position
   */
  static Play straight(
      Strips strips, Walls walls, long[] near, long off, Place place, Rectangle allowed) {
    long p = strips.alongX ? place.x() : place.y();
    long q = strips.alongX ? place.y() : place.x();
    Interval alongP = strips.alongX ? allowed.x() : allowed.y();
    Interval alongQ = strips.alongX ? allowed.y() : allowed.x();
    long pLo = Math.max(alongP.lo(), walls.pLeast + off);
    long pHi = Math.min(alongP.hi(), walls.pMost - off);
    long qLo = Math.max(alongQ.lo(), walls.qLeast + off);
    long qHi = Math.min(alongQ.hi(), walls.qMost - off);
    for (int i = 0; i < near.length; i += Obstacles.STRIDE) {
      // The obstacle forbids the open rectangle (a, b) × (c, d), if that is not empty.
      long a = near[i] - off;
      long b = near[i + 1] + off;
      long c = near[i + 2] - off;
      long d = near[i + 3] + off;
      if (near[i + 4] >= 0 || a >= b || c >= d) {
        continue;
      }
      if (c < q && q < d) {
        if (b <= p) {
          pLo = Math.max(pLo, b);
        } else {
          pHi = Math.min(pHi, a);
        }
      }
      if (a < p && p < b) {
        if (d <= q) {
          qLo = Math.max(qLo, d);
        } else {
          qHi = Math.min(qHi, c);
        }
      }
    }
    return strips.alongX
        ? new Play(p - pLo, pHi - p, q - qLo, qHi - q)
        : new Play(q - qLo, qHi - q, p - pLo, pHi - p);
  }
}
