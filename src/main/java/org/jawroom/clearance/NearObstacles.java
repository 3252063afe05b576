package org.jawroom.clearance;

import java.util.Arrays;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Box;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Turn;

/**
 * Collects the obstacles of a vise in one turn that matter within a rectangle of places. It reckons
 * in the vise frame, into which it turns guards and places, few as they are beside pairs.
 */
final class NearObstacles {
  private static final long[] NONE = {};

  /** Room for so many obstacles to begin with. */
  private static final int FIRST = 8;

  private final SweptParts parts;
  private final SweptGuards guards;
  private final boolean withTolerance;
  private final boolean uIsX;
  private final boolean uUp;
  private final boolean vUp;
  private final boolean uFirst;
  private final Interval u;
  private final Interval v;
  private final long bound;
  private long[] found = NONE;
  private int count;

  /** See {@link Obstacles#within}. */
  NearObstacles(Obstacles of, Axis first, Interval x, Interval y, long bound) {
    Turn turn = of.turn();
    this.parts = of.parts();
    this.guards = of.guards();
    this.withTolerance = of.withTolerance();
    this.uIsX = turn.uAxis() == Axis.X;
    this.uUp = turn.uSign() > 0;
    this.vUp = turn.vSign() > 0;
    this.uFirst = turn.uAxis() == first;
    this.u = signed(uIsX ? x : y, uUp);
    this.v = signed(uIsX ? y : x, vUp);
    this.bound = bound;
  }

  long[] all() {
    SweptGuard[] boxes = guards.boxes();
    for (int i = 0; i < boxes.length; i++) {
      SweptGuard guard = boxes[i];
      Box box = guard.box();
      Interval alongU = signed(uIsX ? box.x() : box.y(), uUp);
      Interval alongV = signed(uIsX ? box.y() : box.x(), vUp);
      for (Kind kind : Kind.ALL) {
        if (kind.situation() == guard.situation()) {
          // What neither part nor guard does otherwise while loading was found while cutting.
          boolean again = kind == Kind.LOADING && guards.repeats(i);
          int end = again ? parts.onlyLoading() : parts.rows(kind).length;
          add(guard, alongU, alongV, box.z(), kind, end);
        }
      }
    }
    return RisingObstacles.of(found, count);
  }

  private void add(
      SweptGuard guard, Interval alongU, Interval alongV, Interval z, Kind kind, int end) {
    long required = guards.required(kind, guard) + (withTolerance ? guard.tolerance() : 0);
    // If the parts of a kind all together are not too near, none of them is.
    if (isFar(parts.reach(kind, withTolerance), 0, alongU, alongV, z, required)) {
      return;
    }
    long[] rows = parts.rows(kind);
    for (int at = 0; at < end; at += SweptParts.ROW) {
      long need = required + (withTolerance ? rows[at + SweptParts.TOLERANCE] : 0);
      if (!isFar(rows, at, alongU, alongV, z, need)
          && (!guard.table()
              || Pair.meetsTable(parts.parts().get((int) rows[at + SweptParts.INDEX])))) {
        keep(rows, at, alongU, alongV, z, need);
      }
    }
  }

  /** Whether a part is nowhere nearer to a guard than the bound. */
  private boolean isFar(
      long[] row, int at, Interval alongU, Interval alongV, Interval z, long need) {
    long far = bound + need;
    return z.lo() - row[at + SweptParts.W_HI] >= far
        || row[at + SweptParts.W_LO] - z.hi() >= far
        || alongU.lo() - row[at + SweptParts.U_HI] - u.hi() >= far
        || u.lo() + row[at + SweptParts.U_LO] - alongU.hi() >= far
        || alongV.lo() - row[at + SweptParts.V_HI] - v.hi() >= far
        || v.lo() + row[at + SweptParts.V_LO] - alongV.hi() >= far;
  }

  private void keep(long[] row, int at, Interval alongU, Interval alongV, Interval z, long need) {
    if (count == found.length) {
      found = Arrays.copyOf(found, Math.max(FIRST * Obstacles.STRIDE, 2 * count));
    }
    int atU = uFirst ? count : count + 2;
    int atV = uFirst ? count + 2 : count;
    long a = alongU.lo() - row[at + SweptParts.U_HI] - need;
    long b = alongU.hi() - row[at + SweptParts.U_LO] + need;
    found[atU] = uUp ? a : -b;
    found[atU + 1] = uUp ? b : -a;
    long c = alongV.lo() - row[at + SweptParts.V_HI] - need;
    long d = alongV.hi() - row[at + SweptParts.V_LO] + need;
    found[atV] = vUp ? c : -d;
    found[atV + 1] = vUp ? d : -c;
    found[count + 4] =
        Math.max(z.lo() - row[at + SweptParts.W_HI], row[at + SweptParts.W_LO] - z.hi()) - need;
    count += Obstacles.STRIDE;
  }

  private static Interval signed(Interval interval, boolean up) {
    return up ? interval : interval.negated();
  }
}
