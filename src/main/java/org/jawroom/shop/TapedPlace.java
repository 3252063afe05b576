package org.jawroom.shop;

import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Orientation;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.vise.Vise;

/**
 * Where a vise stands, by the two measures of a setup card, half-nanometres.
 *
 * @param fromLeft from the table's left edge to the fixed-jaw face (both jaws moving: the plane
 *     midway between them) or, across the jaws, to the base's side, see {@link
 *     Vise#isTapedFromBase}; negative where that hangs over the edge
 * @param fromFront likewise from the table's front edge
 */
public record TapedPlace(Orientation handleTo, long fromLeft, long fromFront) {

  /** The place at which the origin of the vise frame stands at (x, y) of the table frame. */
  public static TapedPlace of(Machine machine, Vise vise, Orientation turn, long x, long y) {
    return new TapedPlace(
        turn,
        x + machine.tableLength() / 2 - half(vise, turn, Axis.X),
        y + machine.tableWidth() / 2 - half(vise, turn, Axis.Y));
  }

  /** The x of the vise frame's origin in the table frame. */
  public long x(Machine machine, Vise vise) {
    return fromLeft - machine.tableLength() / 2 + half(vise, handleTo, Axis.X);
  }

  /** The y likewise. */
  public long y(Machine machine, Vise vise) {
    return fromFront - machine.tableWidth() / 2 + half(vise, handleTo, Axis.Y);
  }

  /** Whether a measure along a table lies less than a whole table off it, as every vise does. */
  public static boolean isNearTable(long from, long table) {
    return -table <= from && from <= 2 * table;
  }

  /** From where the tape ends along an axis to the origin of the vise frame. */
  private static long half(Vise vise, Orientation turn, Axis axis) {
    return axis != turn.uAxis() && vise.isTapedFromBase() ? vise.base().width().length() / 2 : 0;
  }
}
