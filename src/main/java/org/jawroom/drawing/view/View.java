package org.jawroom.drawing.view;

import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Box;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Rectangle;

/** The direction of view. */
public enum View {
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

  /** The axis that points right. */
  public Axis right() {
    return right;
  }

  /** The axis that points up. */
  public Axis up() {
    return up;
  }

  public boolean shows(Axis axis) {
    return axis == right || axis == up;
  }

  Flat flat(Box box) {
    return new Flat(box.along(right), box.along(up));
  }

  /** A box projected to this view, in half-nanometres; unbounded where the box is. */
  public record Flat(Interval right, Interval up) {
    static Flat of(Rectangle plan) {
      return new Flat(plan.x(), plan.y());
    }
  }
}
