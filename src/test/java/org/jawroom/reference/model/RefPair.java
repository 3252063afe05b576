package org.jawroom.reference.model;

import org.jawroom.geometry.Length;
import org.jawroom.reference.model.RefGuard.Block;
import org.jawroom.reference.space.Facing;
import org.jawroom.reference.space.Rect;
import org.jawroom.reference.space.Span;

/**
 * A part and a guard in one situation.
 *
 * @param required the required clearance; {@code tolerance} the sum of both tolerances
 */
public record RefPair(
    RefGuard guard, RefPart part, boolean cutting, long required, long tolerance) {

  public Block block() {
    return guard.block(cutting);
  }

  public long need() {
    return required + tolerance;
  }

  public long zGap() {
    return part.w(cutting).gap(block().z());
  }

  /**
   * The margin of one pair as a function of (x, y): max(aX − x, x − bX, aY − y, y − bY, flat).
   *
   * @param flat the margin along z alone
   */
  public record Field(long aX, long bX, long aY, long bY, long flat) {

    public long margin(long x, long y) {
      return Math.max(Math.max(Math.max(aX - x, x - bX), Math.max(aY - y, y - bY)), flat);
    }

    /**
     * The open rectangle where the margin is below {@code t}; {@code null} if z alone keeps it
     * clear.
     */
    public Rect below(long t) {
      return flat >= t ? null : new Rect(aX - t, bX + t, aY - t, bY + t);
    }

    /**
     * The open rectangle where the gap along x or y, less {@code tap}, is not enough; {@code null}
     * if z alone keeps it clear.
     */
    Rect untappable(long tap) {
      return flat >= 0 ? null : new Rect(aX - tap, bX + tap, aY - tap, bY + tap);
    }

    /** Whether no place has a margin, since the part or the guard has no end. */
    boolean isEndless() {
      return aX < -Length.ENDLESS / 4
          && bX > Length.ENDLESS / 4
          && aY < -Length.ENDLESS / 4
          && bY > Length.ENDLESS / 4
          && flat < -Length.ENDLESS / 4;
    }

    /** Whether this margin is nowhere above that of {@code other}. */
    boolean atMost(Field other) {
      return aX <= other.aX
          && bX >= other.bX
          && aY <= other.aY
          && bY >= other.bY
          && flat <= other.flat;
    }
  }

  public Field field(Facing facing, Span u) {
    Span x = facing.x(u, part.v());
    Span y = facing.y(u, part.v());
    Block g = block();
    return new Field(
        g.x().lo() - x.hi() - need(),
        g.x().hi() - x.lo() + need(),
        g.y().lo() - y.hi() - need(),
        g.y().hi() - y.lo() + need(),
        zGap() - need());
  }
}
