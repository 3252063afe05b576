package org.jawroom.shop.machine;

import org.jawroom.geometry.Axis;

/** The set of axes that carry something: the table, or a guard. */
public record Axes(boolean x, boolean y, boolean z) {

  public static final Axes NONE = new Axes(false, false, false);

  public boolean has(Axis axis) {
    return switch (axis) {
      case X -> x;
      case Y -> y;
      case Z -> z;
    };
  }
}
