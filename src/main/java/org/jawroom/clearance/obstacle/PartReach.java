package org.jawroom.clearance.obstacle;

import org.jawroom.clearance.gap.ClearanceClass;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Length;
import org.jawroom.geometry.Orientation;
import org.jawroom.shop.machine.Side;

/**
 * How far the parts of each {@link ClearanceClass} reach, tolerances added or not, for guards that
 * fill everything beyond a face. An empty class has reversed infinite limits, so that no face is
 * near.
 */
final class PartReach {
  private static final Side[] SIDES = Side.values();

  private final long[][] bare;
  private final long[][] tolerant;

  /** See {@link #ends}; each computed on first use, by any thread, always with the same result. */
  private final Ends[] ends = new Ends[2 * Orientation.ALL.size()];

  /** Final, so that a thread that finds it made by another sees its content, too (JLS 17.5). */
  @SuppressWarnings("ArrayRecordComponent") // never compared
  private record Ends(long[] all) {}

  /**
   * Measures the parts of {@link SweptParts#rows}.
   *
   * @param rows those of each class
   * @param hasTolerance whether any part has a tolerance above 0
   */
  PartReach(long[][] rows, boolean hasTolerance) {
    bare = boxes(rows, false);
    tolerant = hasTolerance ? boxes(rows, true) : bare;
  }

  private static long[][] boxes(long[][] rows, boolean withTolerance) {
    long[][] boxes = new long[rows.length][SweptParts.ROW];
    for (int kind = 0; kind < rows.length; kind++) {
      long[] box = boxes[kind];
      for (int end = SweptParts.U_LO; end <= SweptParts.W_HI; end += 2) {
        long lo = Length.ENDLESS;
        long hi = -Length.ENDLESS;
        for (int at = 0; at < rows[kind].length; at += SweptParts.ROW) {
          long off = withTolerance ? rows[kind][at + SweptParts.TOLERANCE] : 0;
          lo = Math.min(lo, rows[kind][at + end] - off);
          hi = Math.max(hi, rows[kind][at + end + 1] + off);
        }
        box[end] = lo;
        box[end + 1] = hi;
      }
    }
    return boxes;
  }

  /** The bounding box of the parts of a class, as a row. Must not be modified. */
  long[] box(ClearanceClass kind, boolean withTolerance) {
    return (withTolerance ? tolerant : bare)[kind.ordinal()];
  }

  /**
   * How far the parts of each class reach to each side in one turn, for a vise at the origin: the
   * least x on the left, the greatest on the right, the least y in front, the greatest at the rear.
   * Classes in their order, and for each the sides in theirs. Must not be modified.
   */
  long[] ends(Orientation turn, boolean withTolerance) {
    int index = 2 * turn.ordinal() + (withTolerance ? 1 : 0);
    Ends made = ends[index];
    if (made == null) {
      made = new Ends(ends(turn, withTolerance ? tolerant : bare));
      ends[index] = made;
    }
    return made.all();
  }

  private static long[] ends(Orientation turn, long[][] boxes) {
    long[] ends = new long[boxes.length * SIDES.length];
    for (int kind = 0; kind < boxes.length; kind++) {
      for (Side side : SIDES) {
        boolean alongX = side == Side.LEFT || side == Side.RIGHT;
        boolean isU = (turn.uAxis() == Axis.X) == alongX;
        boolean isPlus = (isU ? turn.uSign() : turn.vSign()) > 0;
        boolean isHigh = side == Side.RIGHT || side == Side.REAR;
        int lo = isU ? SweptParts.U_LO : SweptParts.V_LO;
        long end = boxes[kind][isPlus == isHigh ? lo + 1 : lo];
        ends[kind * SIDES.length + side.ordinal()] = isPlus ? end : -end;
      }
    }
    return ends;
  }
}
