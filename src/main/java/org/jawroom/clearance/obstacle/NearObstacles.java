package org.jawroom.clearance.obstacle;

import java.util.Arrays;
import org.jawroom.clearance.gap.ClearanceClass;
import org.jawroom.clearance.guard.SweptGuard;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Orientation;

/**
 * Collects the obstacles of a vise in one turn that matter within a rectangle of positions. It
 * computes in the vise frame: transforming the guards and the rectangle once is cheaper than
 * transforming every pair.
 */
final class NearObstacles {
  private static final long[] NONE = {};

  /** Initial capacity, in obstacles. */
  private static final int FIRST = 8;

  private final SweptParts parts;
  private final SweptGuards guards;
  private final boolean withTolerance;
  private final boolean uUp;
  private final boolean vUp;
  private final boolean uFirst;
  private final long[] sweeps;
  private final long uLo;
  private final long uHi;
  private final long vLo;
  private final long vHi;
  private final long bound;
  private long[] found = NONE;
  private int count;

  /** See {@link Obstacles#within}. */
  NearObstacles(Obstacles of, Axis first, Interval x, Interval y, long bound) {
    Orientation turn = of.turn();
    this.parts = of.parts();
    this.guards = of.guards();
    this.withTolerance = of.withTolerance();
    this.uUp = turn.uSign() > 0;
    this.vUp = turn.vSign() > 0;
    this.uFirst = turn.uAxis() == first;
    this.sweeps = guards.rows(turn);
    Interval u = turn.u(x, y);
    Interval v = turn.v(x, y);
    this.uLo = u.lo();
    this.uHi = u.hi();
    this.vLo = v.lo();
    this.vHi = v.hi();
    this.bound = bound;
  }

  long[] all() {
    int[] boxes = guards.boxes();
    for (int i = 0; i < boxes.length; i++) {
      SweptGuard guard = guards.guard(boxes[i]);
      for (ClearanceClass kind : SweptParts.CLASSES) {
        if (kind.situation() == guard.situation()
            && (!guard.table() || parts.someMeetTable(kind))) {
          // A part and a guard that are the same in both situations are already found under
          // cutting.
          boolean again = kind == ClearanceClass.LOADING && guards.repeats(i);
          int end = again ? parts.onlyLoading() : parts.rows(kind).length;
          add(guard, boxes[i] * SweptGuards.ROW, kind, end);
        }
      }
    }
    return RisingObstacles.of(found, count);
  }

  /** Adds the parts of a class that come near the guard whose sweep starts at {@code sweep}. */
  private void add(SweptGuard guard, int sweep, ClearanceClass kind, int end) {
    long required = guards.required(kind, guard) + (withTolerance ? guard.tolerance() : 0);
    long[] rows = parts.rows(kind);
    for (int at = 0; at < end; at += SweptParts.ROW) {
      long need = required + (withTolerance ? rows[at + SweptParts.TOLERANCE] : 0);
      if (!isFar(rows, at, sweep, need)
          && (!guard.table() || parts.meetsTable((int) rows[at + SweptParts.INDEX]))) {
        keep(rows, at, sweep, need);
      }
    }
  }

  /** Whether a part keeps at least the bound from a guard everywhere in the rectangle. */
  private boolean isFar(long[] row, int at, int sweep, long need) {
    long far = bound + need;
    return sweeps[sweep + SweptParts.W_LO] - row[at + SweptParts.W_HI] >= far
        || row[at + SweptParts.W_LO] - sweeps[sweep + SweptParts.W_HI] >= far
        || sweeps[sweep + SweptParts.U_LO] - row[at + SweptParts.U_HI] - uHi >= far
        || uLo + row[at + SweptParts.U_LO] - sweeps[sweep + SweptParts.U_HI] >= far
        || sweeps[sweep + SweptParts.V_LO] - row[at + SweptParts.V_HI] - vHi >= far
        || vLo + row[at + SweptParts.V_LO] - sweeps[sweep + SweptParts.V_HI] >= far;
  }

  private void keep(long[] row, int at, int sweep, long need) {
    if (count == found.length) {
      found = Arrays.copyOf(found, Math.max(FIRST * Obstacles.STRIDE, 2 * count));
    }
    int atU = uFirst ? count : count + 2;
    int atV = uFirst ? count + 2 : count;
    long a = sweeps[sweep + SweptParts.U_LO] - row[at + SweptParts.U_HI] - need;
    long b = sweeps[sweep + SweptParts.U_HI] - row[at + SweptParts.U_LO] + need;
    found[atU] = uUp ? a : -b;
    found[atU + 1] = uUp ? b : -a;
    long c = sweeps[sweep + SweptParts.V_LO] - row[at + SweptParts.V_HI] - need;
    long d = sweeps[sweep + SweptParts.V_HI] - row[at + SweptParts.V_LO] + need;
    found[atV] = vUp ? c : -d;
    found[atV + 1] = vUp ? d : -c;
    long under = sweeps[sweep + SweptParts.W_LO] - row[at + SweptParts.W_HI];
    long over = row[at + SweptParts.W_LO] - sweeps[sweep + SweptParts.W_HI];
    found[count + 4] = Math.max(under, over) - need;
    count += Obstacles.STRIDE;
  }
}
