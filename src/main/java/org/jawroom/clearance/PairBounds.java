package org.jawroom.clearance;

import org.jawroom.geometry.Box;

/**
 * The margin of one pair as a function of the place, folded into five lengths: margin(x, y) = max(a
 * − x, x − b, c − y, y − d, f). So the places with margin below t are the open rectangle (a − t, b
 * + t) × (c − t, d + t) if f &lt; t, and none otherwise.
 */
public record PairBounds(long a, long b, long c, long d, long f) {

  /**
   * @param part what the part sweeps with the vise at the origin
   * @param need required clearance and tolerance together
   */
  static PairBounds of(Box part, Box guard, long need) {
    return new PairBounds(
        guard.x().lo() - part.x().hi() - need,
        guard.x().hi() - part.x().lo() + need,
        guard.y().lo() - part.y().hi() - need,
        guard.y().hi() - part.y().lo() + need,
        guard.z().gapTo(part.z()) - need);
  }

  /** The margin with the vise at (x, y). */
  public long margin(long x, long y) {
    return Math.max(Math.max(Math.max(a - x, x - b), Math.max(c - y, y - d)), f);
  }
}
