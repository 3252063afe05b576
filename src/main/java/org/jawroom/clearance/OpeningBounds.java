package org.jawroom.clearance;

import java.util.ArrayList;
import java.util.List;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Box;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Length;
import org.jawroom.geometry.OpeningInterval;
import org.jawroom.geometry.Orientation;
import org.jawroom.shop.Side;

/**
 * What the openings of a vise in one turn are bounded by: margin ≥ 0, touching counts.
 *
 * <p>The place is told as p along the vise's own +u and q across it, a place's own coordinate with
 * its sign; the opening as a share σ of the full range, from 0 to 1. A part's u limits are linear
 * in σ, so what faces it along u asks one of two things of p and σ, see {@link Bound}; nothing
 * across hangs on σ.
 *
 * @param qLeast no q below this is clear of the walls; {@code qMost} none above
 * @param walls what the walls ahead and behind ask; of equal slopes the tightest only
 * @param boxes the boxes that are not always clear in height
 */
public record OpeningBounds(long qLeast, long qMost, List<Bound> walls, List<Facing> boxes) {

  /**
   * Part before guard: Δ·σ ≤ c − p; else, part behind guard: Δ·σ ≥ c − p.
   *
   * @param c from the face to the part's end at σ = 0
   * @param delta how much farther out that end stands at σ = 1
   */
  public record Bound(long c, long delta, boolean before) {

    /** Whether it bounds p alone. */
    public boolean isPlain() {
      return delta == 0;
    }

    /** Whether it bounds σ from below rather than above; not asked of a plain one. */
    public boolean isLower() {
      return before == (delta < 0);
    }

    /** What a plain one says of p. */
    public boolean allows(long p) {
      return before ? p <= c : p >= c;
    }
  }

  /**
   * A box and a part that hit each other where c &lt; q &lt; d, unless the part stays before the
   * box or behind it.
   *
   * @param sides what each of that asks; one is missing where the box is without end
   * @param lo nothing is hit at any opening for p up to this, {@code hi} nor from this on
   */
  public record Facing(long c, long d, List<Bound> sides, long lo, long hi) {}

  public static OpeningBounds of(SweptParts parts, SweptGuards guards, Orientation turn) {
    Axis along = turn.uAxis();
    boolean plus = turn.uSign() > 0;
    Obstacles across = Obstacles.of(parts, guards, turn);
    Side ahead =
        along == Axis.X ? (plus ? Side.RIGHT : Side.LEFT) : (plus ? Side.REAR : Side.FRONT);
    Side behind =
        along == Axis.X ? (plus ? Side.LEFT : Side.RIGHT) : (plus ? Side.FRONT : Side.REAR);
    List<Bound> walls = new ArrayList<>();
    List<Facing> boxes = new ArrayList<>();
    for (Part part : parts.parts()) {
      ClearanceClass kind = ClearanceClass.of(part);
      long front = guards.face(kind, ahead, true);
      long back = guards.face(kind, behind, true);
      if (Length.isBounded(front)) {
        tighten(walls, before(part.u(), (plus ? front : -front) - part.tolerance()));
      }
      if (Length.isBounded(back)) {
        tighten(walls, behind(part.u(), (plus ? back : -back) + part.tolerance()));
      }
      for (int index : guards.boxes()) {
        SweptGuard guard = guards.all().get(index);
        if (kind.situation() == guard.situation() && (!guard.table() || Pair.meetsTable(part))) {
          addFacing(boxes, part, guard, guards.required(kind, guard), turn);
        }
      }
    }
    return new OpeningBounds(
        along == Axis.X ? across.front() : across.left(),
        along == Axis.X ? across.rear() : across.right(),
        walls,
        boxes);
  }

  /** Of walls with the same slope on the same side only the tightest matters. */
  private static void tighten(List<Bound> walls, Bound wall) {
    for (int i = 0; i < walls.size(); i++) {
      Bound other = walls.get(i);
      if (other.before() == wall.before() && other.delta() == wall.delta()) {
        if (wall.before() ? wall.c() < other.c() : wall.c() > other.c()) {
          walls.set(i, wall);
        }
        return;
      }
    }
    walls.add(wall);
  }

  private static void addFacing(
      List<Facing> boxes, Part part, SweptGuard guard, long required, Orientation turn) {
    long need = required + guard.tolerance() + part.tolerance();
    if (guard.box().z().gapTo(part.w()) >= need) {
      return;
    }
    Box box = guard.box();
    Interval v = turn.uAxis() == Axis.X ? turn.y(part.v(), part.v()) : turn.x(part.v(), part.v());
    Interval held = box.along(turn.uAxis().across());
    Interval along = box.along(turn.uAxis());
    Interval u = turn.uSign() > 0 ? along : along.negated();
    List<Bound> sides = new ArrayList<>(2);
    long lo = -2 * Length.ENDLESS;
    long hi = 2 * Length.ENDLESS;
    if (Length.isBounded(u.lo())) {
      Bound before = before(part.u(), u.lo() - need);
      sides.add(before);
      lo = before.c() - Math.max(0, before.delta());
    }
    if (Length.isBounded(u.hi())) {
      Bound behind = behind(part.u(), u.hi() + need);
      sides.add(behind);
      hi = behind.c() - Math.min(0, behind.delta());
    }
    boxes.add(new Facing(held.lo() - v.hi() - need, held.hi() - v.lo() + need, sides, lo, hi));
  }

  /** The part's high end stays below {@code face}. */
  private static Bound before(OpeningInterval u, long face) {
    return new Bound(face - u.closed().hi(), u.open().hi() - u.closed().hi(), true);
  }

  /** The part's low end stays above {@code face}. */
  private static Bound behind(OpeningInterval u, long face) {
    return new Bound(face - u.closed().lo(), u.open().lo() - u.closed().lo(), false);
  }
}
