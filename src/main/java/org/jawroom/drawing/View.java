package org.jawroom.drawing;

import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Box;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Rectangle;

/** From where one looks. */
enum View {
  /** From above, the operator at the bottom: x to the right, y up. */
  PLAN(Axis.X, Axis.Y),
  /** From the right, the operator at the left: y to the right, z up. */
  SIDE(Axis.Y, Axis.Z);

  private final Axis right;
  private final Axis up;

  View(Axis right, Axis up) {
    this.right = right;
    this.up = up;
  }

  /** The axis that runs to the right. */
  Axis right() {
    return right;
  }

  /** The axis that runs up. */
  Axis up() {
    return up;
  }

  boolean shows(Axis axis) {
    return axis == right || axis == up;
  }

  Flat flat(Box box) {
    return new Flat(box.along(right), box.along(up));
  }

  /** A box as this view sees it; half-nanometres, without end where the box has none. */
  record Flat(Interval right, Interval up) {
    static Flat of(Rectangle plan) {
      return new Flat(plan.x(), plan.y());
    }
  }
}
