package org.jawroom.clearance;

import java.util.Arrays;
import java.util.Optional;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Box;
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

  private static final long[] NONE = {};

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
      SweptParts.Ends reach = parts.reach(kind, withTolerance);
      left = least(left, guards.face(kind, Side.LEFT, withTolerance) - reach.xLo(turn));
      right = most(right, guards.face(kind, Side.RIGHT, withTolerance) - reach.xHi(turn));
      front = least(front, guards.face(kind, Side.FRONT, withTolerance) - reach.yLo(turn));
      rear = most(rear, guards.face(kind, Side.REAR, withTolerance) - reach.yHi(turn));
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
   * places: a, b, c, d, f of each, one after the other, a and b being along {@code first} (X or Y),
   * c and d along the other axis.
   */
  public long[] within(Axis first, long xLo, long xHi, long yLo, long yHi, long bound) {
    Near near = new Near(first, xLo, xHi, yLo, yHi, bound);
    for (SweptGuard guard : guards.boxes()) {
      near.add(guard);
    }
    return near.count == near.found.length ? near.found : Arrays.copyOf(near.found, near.count);
  }

  /**
   * What limits the place (x, y): of equal margins the first guard, then the first part, then
   * cutting; empty if there is no pair.
   */
  public Optional<Limit> limit(long x, long y) {
    SweptGuard first = null;
    int part = -1;
    long least = Long.MAX_VALUE;
    for (SweptGuard guard : guards.all()) {
      for (Kind kind : Kind.ALL) {
        // If the parts of a kind all together are not nearer, none of them is.
        if (kind.situation() == guard.situation()
            && margin(parts.reach(kind, true), guard, kind, x, y) <= least) {
          for (int i = 0; i < parts.count(); i++) {
            if (parts.kind(i) == kind && meet(i, guard)) {
              long margin = margin(parts.ends(i), guard, kind, x, y) - parts.ends(i).tolerance();
              // A guard comes once in each of its situations; its parts come before those.
              boolean earlier = first != null && guard.rank() == first.rank() && i < part;
              if (margin < least || margin == least && earlier) {
                least = margin;
                first = guard;
                part = i;
              }
            }
          }
        }
      }
    }
    return first == null
        ? Optional.empty()
        : Optional.of(
            Limit.of(
                parts.parts().get(part),
                first,
                guards.required(parts.kind(part), first),
                turn,
                parts.openings(),
                x,
                y));
  }

  private boolean meet(int part, SweptGuard guard) {
    return parts.kind(part).situation() == guard.situation()
        && (!guard.table() || Pair.meetsTable(parts.parts().get(part)));
  }

  private long margin(SweptParts.Ends part, SweptGuard guard, Kind kind, long x, long y) {
    Box box = guard.box();
    long alongX = Math.max(box.x().lo() - part.xHi(turn) - x, x + part.xLo(turn) - box.x().hi());
    long alongY = Math.max(box.y().lo() - part.yHi(turn) - y, y + part.yLo(turn) - box.y().hi());
    long alongZ = Math.max(box.z().lo() - part.wHi(), part.wLo() - box.z().hi());
    return Math.max(alongZ, Math.max(alongX, alongY))
        - guards.required(kind, guard)
        - guard.tolerance();
  }

  /** Collects obstacles. */
  private final class Near {
    private final boolean xFirst;
    private final long xLo;
    private final long xHi;
    private final long yLo;
    private final long yHi;
    private final long bound;
    private long[] found = NONE;
    private int count;

    Near(Axis first, long xLo, long xHi, long yLo, long yHi, long bound) {
      this.xFirst = first == Axis.X;
      this.xLo = xLo;
      this.xHi = xHi;
      this.yLo = yLo;
      this.yHi = yHi;
      this.bound = bound;
    }

    void add(SweptGuard guard) {
      for (Kind kind : Kind.ALL) {
        if (kind.situation() != guard.situation()) {
          continue;
        }
        // If the parts of a kind all together are not too near, none of them is.
        long required = guards.required(kind, guard) + (withTolerance ? guard.tolerance() : 0);
        if (!add(guard, parts.reach(kind, withTolerance), required, false)) {
          continue;
        }
        for (int i = 0; i < parts.count(); i++) {
          if (parts.kind(i) == kind && meet(i, guard)) {
            SweptParts.Ends part = parts.ends(i);
            add(guard, part, required + (withTolerance ? part.tolerance() : 0), true);
          }
        }
      }
    }

    /** Whether the two can come too near. */
    private boolean add(SweptGuard guard, SweptParts.Ends part, long need, boolean keep) {
      long f =
          Math.max(guard.box().z().lo() - part.wHi(), part.wLo() - guard.box().z().hi()) - need;
      if (f >= bound) {
        return false;
      }
      long a = guard.box().x().lo() - part.xHi(turn) - need;
      long b = guard.box().x().hi() - part.xLo(turn) + need;
      if (a - xHi >= bound || xLo - b >= bound) {
        return false;
      }
      long c = guard.box().y().lo() - part.yHi(turn) - need;
      long d = guard.box().y().hi() - part.yLo(turn) + need;
      if (c - yHi >= bound || yLo - d >= bound) {
        return false;
      }
      if (keep) {
        keep(xFirst ? a : c, xFirst ? b : d, xFirst ? c : a, xFirst ? d : b, f);
      }
      return true;
    }

    private void keep(long a, long b, long c, long d, long f) {
      if (count == found.length) {
        found = Arrays.copyOf(found, Math.max(8 * STRIDE, 2 * count));
      }
      found[count] = a;
      found[count + 1] = b;
      found[count + 2] = c;
      found[count + 3] = d;
      found[count + 4] = f;
      count += STRIDE;
    }
  }
}
