package org.jawroom.clearance.gap;

import org.jawroom.geometry.Box;

/**
 * The margin of one pair as a function of position, folded into five lengths: margin(x, y) = max(a
 * − x, x − b, c − y, y − d, f). The positions with margin below t form the open rectangle (a − t, b
 * + t) × (c − t, d + t) if f &lt; t, and the empty set otherwise.
 */
public record PairBounds(long a, long b, long c, long d, long f) {

  /**
   * @param part the part's swept box with the vise at the origin
   * @param need required clearance plus both tolerances
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
