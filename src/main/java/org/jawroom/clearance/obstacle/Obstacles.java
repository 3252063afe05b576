package org.jawroom.clearance.obstacle;

import java.util.Optional;
import org.jawroom.clearance.gap.ClearanceClass;
import org.jawroom.clearance.gap.Limit;
import org.jawroom.clearance.guard.SweptGuard;
import org.jawroom.clearance.part.Part;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Length;
import org.jawroom.geometry.Orientation;
import org.jawroom.shop.machine.Side;

/**
 * The configuration-space obstacles of a vise in one turn, as functions of the position of its
 * origin: four walls, and one obstacle per pair of a part and a box (Lozano-Pérez, Spatial
 * Planning, IEEE Trans. Computers C-32(2), 1983).
 *
 * <p>The margin at (x, y) is the minimum of x − left, right − x, y − front, rear − y and, for each
 * obstacle, max(a − x, x − b, c − y, y − d, f).
 *
 * @param left −2 {@link Length#ENDLESS} if there is no wall; {@code front} likewise
 * @param right 2 {@link Length#ENDLESS} if there is no wall; {@code rear} likewise
 */
public record Obstacles(
    SweptParts parts,
    SweptGuards guards,
    Orientation turn,
    boolean withTolerance,
    long left,
    long right,
    long front,
    long rear) {

  private static final int SIDES = Side.values().length;
  private static final int LEFT = Side.LEFT.ordinal();
  private static final int RIGHT = Side.RIGHT.ordinal();
  private static final int FRONT = Side.FRONT.ordinal();
  private static final int REAR = Side.REAR.ordinal();

  /** Longs per obstacle in {@link #within}. */
  public static final int STRIDE = 5;

  public static Obstacles of(SweptParts parts, SweptGuards guards, Orientation turn) {
    return of(parts, guards, turn, true);
  }

  /** The obstacles with every tolerance taken as 0. */
  public static Obstacles withoutTolerance(SweptParts parts, SweptGuards guards, Orientation turn) {
    return of(parts, guards, turn, false);
  }

  private static Obstacles of(
      SweptParts parts, SweptGuards guards, Orientation turn, boolean withTolerance) {
    long[] faces = guards.faces(withTolerance);
    long[] ends = parts.reach().ends(turn, withTolerance);
    long left = -2 * Length.ENDLESS;
    long right = 2 * Length.ENDLESS;
    long front = left;
    long rear = right;
    for (int of = 0; of < faces.length; of += SIDES) {
      left = least(left, faces[of + LEFT] - ends[of + LEFT]);
      right = most(right, faces[of + RIGHT] - ends[of + RIGHT]);
      front = least(front, faces[of + FRONT] - ends[of + FRONT]);
      rear = most(rear, faces[of + REAR] - ends[of + REAR]);
    }
    return new Obstacles(parts, guards, turn, withTolerance, left, right, front, rear);
  }

  /** A missing face, or a class without parts, yields no wall. */
  private static long least(long so, long wall) {
    return Length.isBounded(wall) ? Math.max(so, wall) : so;
  }

  private static long most(long so, long wall) {
    return Length.isBounded(wall) ? Math.min(so, wall) : so;
  }

  /**
   * The obstacles that can push the margin below {@code bound} somewhere in a rectangle of
   * positions, in ascending order of a. Each occupies five longs a, b, c, d, f; a and b are along
   * {@code first} (X or Y), c and d along the other axis.
   */
  public long[] within(Axis first, Interval x, Interval y, long bound) {
    return new NearObstacles(this, first, x, y, bound).all();
  }

  /**
   * The witness of the margin at (x, y). Ties go to the first guard, then the first part, then
   * cutting; empty if no pair has that margin.
   *
   * @param margin the margin at (x, y) as found by the search
   */
  public Optional<Limit> limit(long x, long y, long margin) {
    SweptGuard first = null;
    ClearanceClass kindOfFirst = null;
    int part = -1;
    boolean uIsX = turn.uAxis() == Axis.X;
    long u = turn.uSign() * (uIsX ? x : y);
    long v = turn.vSign() * (uIsX ? y : x);
    long[] sweeps = guards.rows(turn);
    for (int i = 0; i < guards.count(); i++) {
      if (isBehindWall(guards.side(i), x, y, margin)) {
        continue;
      }
      SweptGuard guard = guards.guard(i);
      // A guard occurs once per situation, consecutively; precedence by part comes before
      // situation.
      if (first != null && guard.rank() != first.rank()) {
        break;
      }
      int sweep = i * SweptGuards.ROW;
      for (ClearanceClass kind : SweptParts.CLASSES) {
        if (kind.situation() != guard.situation() || guard.table() && !parts.someMeetTable(kind)) {
          continue;
        }
        long most = margin + guards.required(kind, guard) + guard.tolerance();
        // If the union of the class is farther off, so is each of its parts.
        if (gap(parts.reach().box(kind, true), 0, u, v, sweeps, sweep) > most) {
          continue;
        }
        long[] rows = parts.rows(kind);
        for (int at = 0; at < rows.length; at += SweptParts.ROW) {
          int index = (int) rows[at + SweptParts.INDEX];
          if ((first == null || index < part)
              && gap(rows, at, u, v, sweeps, sweep) <= most + rows[at + SweptParts.TOLERANCE]
              && (!guard.table() || parts.meetsTable(index))) {
            first = guard;
            kindOfFirst = kind;
            part = index;
          }
        }
      }
    }
    if (first == null) {
      return Optional.empty();
    }
    Part nearest = parts.parts().get(part);
    long required = guards.required(kindOfFirst, first);
    return Optional.of(Limit.of(nearest, first, required, turn, parts.openings(), x, y));
  }

  /**
   * Whether the wall on a side, and so every guard merged into it, is farther off than the margin.
   */
  private boolean isBehindWall(Side side, long x, long y, long margin) {
    if (side == null) {
      return false;
    }
    return switch (side) {
      case LEFT -> x - left > margin;
      case RIGHT -> right - x > margin;
      case FRONT -> y - front > margin;
      case REAR -> rear - y > margin;
    };
  }

  /**
   * The gap between a part and a guard's sweep, with the vise's origin at (u, v) in vise-frame
   * axes.
   */
  private static long gap(long[] row, int at, long u, long v, long[] sweeps, int sweep) {
    long alongU =
        Math.max(
            sweeps[sweep + SweptParts.U_LO] - row[at + SweptParts.U_HI] - u,
            u + row[at + SweptParts.U_LO] - sweeps[sweep + SweptParts.U_HI]);
    long alongV =
        Math.max(
            sweeps[sweep + SweptParts.V_LO] - row[at + SweptParts.V_HI] - v,
            v + row[at + SweptParts.V_LO] - sweeps[sweep + SweptParts.V_HI]);
    long alongW =
        Math.max(
            sweeps[sweep + SweptParts.W_LO] - row[at + SweptParts.W_HI],
            row[at + SweptParts.W_LO] - sweeps[sweep + SweptParts.W_HI]);
    return Math.max(alongW, Math.max(alongU, alongV));
  }
}
