package org.jawroom.clearance.obstacle;

import java.util.ArrayList;
import java.util.List;
import org.jawroom.clearance.gap.ClearanceClass;
import org.jawroom.clearance.gap.Pair;
import org.jawroom.clearance.guard.SweptGuard;
import org.jawroom.clearance.part.Part;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Box;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Length;
import org.jawroom.geometry.OpeningInterval;
import org.jawroom.geometry.Orientation;
import org.jawroom.shop.machine.Side;

/**
 * The constraints margin ≥ 0 on position and opening for a vise in one turn; touching counts as
 * clear.
 *
 * <p>A position is (p, q): p along the vise's +u, that is the table coordinate times the sign of u,
 * and q across it, the plain table coordinate. The opening is a share σ of the full range, from 0
 * to 1. The u limits of a part are linear in σ, so each face along u constrains p and σ by one of
 * two inequalities, see {@link Bound}; constraints across do not depend on σ.
 *
 * @param qLeast least q clear of the walls; {@code qMost} the greatest, both included
 * @param walls the constraints of the walls ahead and behind; only the tightest of each slope
 * @param boxes the boxes not clear by height alone
 */
public record OpeningBounds(long qLeast, long qMost, List<Bound> walls, List<Facing> boxes) {

  /**
   * A linear constraint. Part before guard: Δ·σ ≤ c − p. Otherwise, part behind guard: Δ·σ ≥ c − p.
   *
   * @param c distance from the part's end at σ = 0 to the face, required clearance and tolerances
   *     taken off
   * @param delta how much farther out that end stands at σ = 1
   */
  public record Bound(long c, long delta, boolean before) {

    /** Whether it constrains p alone. */
    public boolean isPlain() {
      return delta == 0;
    }

    /** Whether it bounds σ from below instead of from above; meaningless if {@link #isPlain}. */
    public boolean isLower() {
      return before == (delta < 0);
    }

    /** Whether a plain bound admits p. */
    public boolean allows(long p) {
      return before ? p <= c : p >= c;
    }
  }

  /**
   * A box and a part that collide where c &lt; q &lt; d unless the part stays before or behind the
   * box.
   *
   * @param sides the constraint of each alternative; one is missing where the box is unbounded
   * @param lo nothing is hit at any opening for p ≤ {@code lo} or p ≥ {@code hi}
   */
  public record Facing(long c, long d, List<Bound> sides, long lo, long hi) {}

  /**
   * The constraints of parts and guards.
   *
   * @param parts none of them empty at any opening, see {@link SweptParts#neverEmpty}
   * @param tap how much farther off than required everything must lie along x and y that is not
   *     clear by height; 0: no tap room
   */
  public static OpeningBounds of(SweptParts parts, SweptGuards guards, Orientation turn, long tap) {
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
        tighten(walls, before(part.u(), (plus ? front : -front) - part.tolerance() - tap));
      }
      if (Length.isBounded(back)) {
        tighten(walls, behind(part.u(), (plus ? back : -back) + part.tolerance() + tap));
      }
      for (int index : guards.boxes()) {
        SweptGuard guard = guards.all().get(index);
        if (kind.situation() == guard.situation() && (!guard.table() || Pair.meetsTable(part))) {
          addFacing(boxes, part, guard, guards.required(kind, guard), turn, tap);
        }
      }
    }
    return new OpeningBounds(
        (along == Axis.X ? across.front() : across.left()) + tap,
        (along == Axis.X ? across.rear() : across.right()) - tap,
        walls,
        boxes);
  }

  /** Among walls of equal slope on the same side only the tightest can bind. */
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
      List<Facing> boxes, Part part, SweptGuard guard, long required, Orientation turn, long tap) {
    long least = required + guard.tolerance() + part.tolerance();
    if (guard.box().z().gapTo(part.w()) >= least) {
      return;
    }
    long need = least + tap;
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

  /** The part's high end stays at or below {@code face}. */
  private static Bound before(OpeningInterval u, long face) {
    return new Bound(face - u.closed().hi(), u.open().hi() - u.closed().hi(), true);
  }

  /** The part's low end stays at or above {@code face}. */
  private static Bound behind(OpeningInterval u, long face) {
    return new Bound(face - u.closed().lo(), u.open().lo() - u.closed().lo(), false);
  }
}
