package org.jawroom.geometry;

/** A closed box with sides along the axes. */
public record Box(Interval x, Interval y, Interval z) {

  public Interval along(Axis axis) {
    return switch (axis) {
      case X -> x;
      case Y -> y;
      case Z -> z;
    };
  }

  /** Moved in the table's plane. */
  public Box at(long dx, long dy) {
    return new Box(x.plus(dx), y.plus(dy), z);
  }

  /** The signed distance along the axis on which it is largest; see {@link Interval#gapTo}. */
  public long gapTo(Box other) {
    return Math.max(x.gapTo(other.x), Math.max(y.gapTo(other.y), z.gapTo(other.z)));
  }

  /** The axis that gives {@link #gapTo}; of equal ones y comes first, then x, then z. */
  public Axis gapAxis(Box other) {
    long gap = gapTo(other);
    if (y.gapTo(other.y) == gap) {
      return Axis.Y;
    }
    return x.gapTo(other.x) == gap ? Axis.X : Axis.Z;
  }
}
