package org.jawroom.clearance;

import java.util.Optional;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Box;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Length;
import org.jawroom.geometry.Turn;
import org.jawroom.shop.Side;

/**
 * What keeps a vise in one turn off its places, as a function of the place of its origin: four
 * walls, and one obstacle for each pair of a part and a box (configuration-space obstacles;
 * Lozano-Pérez, Spatial Planning, IEEE Trans. Computers C-32(2), 1983).
 *
 * <p>The margin at (x, y) is the least of x − left, right − x, y − front, rear − y and of each
 * obstacle's max(a − x, x − b, c − y, y − d, f).
 *
 * @param left −2 {@link Length#ENDLESS} where there is none; {@code front} likewise
 * @param right 2 {@link Length#ENDLESS} where there is none; {@code rear} likewise
 */
public record Obstacles(
    SweptParts parts,
    SweptGuards guards,
    Turn turn,
    boolean withTolerance,
    long left,
    long right,
    long front,
    long rear) {

  /** Longs to an obstacle in {@link #within}. */
  public static final int STRIDE = 5;

  public static Obstacles of(SweptParts parts, SweptGuards guards, Turn turn) {
    return of(parts, guards, turn, true);
  }

  /** The same with every tolerance taken as 0. */
  public static Obstacles withoutTolerance(SweptParts parts, SweptGuards guards, Turn turn) {
    return of(parts, guards, turn, false);
  }

  private static Obstacles of(
      SweptParts parts, SweptGuards guards, Turn turn, boolean withTolerance) {
    long left = -2 * Length.ENDLESS;
    long right = 2 * Length.ENDLESS;
    long front = left;
    long rear = right;
    for (Kind kind : Kind.ALL) {
      long[] reach = parts.reach(kind, withTolerance);
      left = least(left, guards.face(kind, Side.LEFT, withTolerance) - xLo(turn, reach, 0));
      right = most(right, guards.face(kind, Side.RIGHT, withTolerance) - xHi(turn, reach, 0));
      front = least(front, guards.face(kind, Side.FRONT, withTolerance) - yLo(turn, reach, 0));
      rear = most(rear, guards.face(kind, Side.REAR, withTolerance) - yHi(turn, reach, 0));
    }
    return new Obstacles(parts, guards, turn, withTolerance, left, right, front, rear);
  }

  /** No face, or no part of the kind, is no wall. */
  private static long least(long so, long wall) {
    return Length.isBounded(wall) ? Math.max(so, wall) : so;
  }

  private static long most(long so, long wall) {
    return Length.isBounded(wall) ? Math.min(so, wall) : so;
  }

  /**
   * The obstacles that can make the margin less than {@code bound} somewhere in a rectangle of
   * places, by rising a: a, b, c, d, f of each, one after the other, a and b being along {@code
   * first} (X or Y), c and d along the other axis.
   */
  public long[] within(Axis first, Interval x, Interval y, long bound) {
    return new NearObstacles(this, first, x, y, bound).all();
  }

  /**
   * What limits the place (x, y): of equal margins the first guard, then the first part, then
   * cutting; empty if there is no pair.
   *
   * @param most the margin there, or more; what is farther off is not looked at
   */
  public Optional<Limit> limit(long x, long y, long most) {
    SweptGuard first = null;
    Kind kindOfFirst = null;
    int part = -1;
    long least = most;
    for (SweptGuard guard : guards.all()) {
      for (Kind kind : Kind.ALL) {
        // If the parts of a kind all together are not nearer, none of them is.
        if (kind.situation() == guard.situation()
            && margin(parts.reach(kind, true), 0, guard, kind, x, y) <= least) {
          long[] rows = parts.rows(kind);
          for (int at = 0; at < rows.length; at += SweptParts.ROW) {
            int index = (int) rows[at + SweptParts.INDEX];
            if (guard.table() && !Pair.meetsTable(parts.parts().get(index))) {
              continue;
            }
            long margin = margin(rows, at, guard, kind, x, y) - rows[at + SweptParts.TOLERANCE];
            // A guard comes once in each of its situations; its parts come before those.
            boolean earlier = first != null && guard.rank() == first.rank() && index < part;
            if (margin < least || margin == least && (first == null || earlier)) {
              least = margin;
              first = guard;
              kindOfFirst = kind;
              part = index;
            }
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

  /** The margin of a row, its own tolerance not taken off. */
  private long margin(long[] row, int at, SweptGuard guard, Kind kind, long x, long y) {
    Box box = guard.box();
    long alongX =
        Math.max(box.x().lo() - xHi(turn, row, at) - x, x + xLo(turn, row, at) - box.x().hi());
    long alongY =
        Math.max(box.y().lo() - yHi(turn, row, at) - y, y + yLo(turn, row, at) - box.y().hi());
    long alongZ =
        Math.max(
            box.z().lo() - row[at + SweptParts.W_HI], row[at + SweptParts.W_LO] - box.z().hi());
    return Math.max(alongZ, Math.max(alongX, alongY))
        - guards.required(kind, guard)
        - guard.tolerance();
  }

  /** The lowest x of a row with the vise standing at the origin. */
  private static long xLo(Turn turn, long[] row, int at) {
    return turn.uAxis() == Axis.X
        ? low(turn.uSign(), row, at + SweptParts.U_LO)
        : low(turn.vSign(), row, at + SweptParts.V_LO);
  }

  private static long xHi(Turn turn, long[] row, int at) {
    return turn.uAxis() == Axis.X
        ? -low(-turn.uSign(), row, at + SweptParts.U_LO)
        : -low(-turn.vSign(), row, at + SweptParts.V_LO);
  }

  private static long yLo(Turn turn, long[] row, int at) {
    return turn.uAxis() == Axis.Y
        ? low(turn.uSign(), row, at + SweptParts.U_LO)
        : low(turn.vSign(), row, at + SweptParts.V_LO);
  }

  private static long yHi(Turn turn, long[] row, int at) {
    return turn.uAxis() == Axis.Y
        ? -low(-turn.uSign(), row, at + SweptParts.U_LO)
        : -low(-turn.vSign(), row, at + SweptParts.V_LO);
  }

  /** The lower of two limits, the lower one at {@code lo}, times the sign. */
  private static long low(int sign, long[] row, int lo) {
    return sign > 0 ? row[lo] : -row[lo + 1];
  }
}
