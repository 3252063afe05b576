package org.jawroom.clearance;

import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Box;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Stretch;
import org.jawroom.geometry.Turn;

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

  /**
   * The same for what the part covers at every opening of {@code openings}; its limits along u may
   * then stand in the wrong order, which leaves the four bounds true.
   */
  static PairBounds core(Pair pair, Turn turn, Interval openings) {
    Box swept = pair.part().over(openings, turn);
    Box guard = pair.guard().box();
    PairBounds whole = of(swept, guard, pair.required() + pair.tolerance());
    Stretch u = pair.part().u();
    long atLow = Math.abs(u.lo(openings.lo()) - u.lo(openings.hi()));
    long atHigh = Math.abs(u.hi(openings.lo()) - u.hi(openings.hi()));
    long below = turn.uSign() > 0 ? atLow : atHigh;
    long above = turn.uSign() > 0 ? atHigh : atLow;
    return turn.uAxis() == Axis.X
        ? new PairBounds(whole.a + above, whole.b - below, whole.c, whole.d, whole.f)
        : new PairBounds(whole.a, whole.b, whole.c + above, whole.d - below, whole.f);
  }

  /** The margin with the vise at (x, y). */
  public long margin(long x, long y) {
    return Math.max(Math.max(Math.max(a - x, x - b), Math.max(c - y, y - d)), f);
  }
}
