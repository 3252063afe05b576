package org.jawroom.geometry;

/** A closed axis-aligned box, in half-nanometres. */
public record Box(Interval x, Interval y, Interval z) {

  public Interval along(Axis axis) {
    return switch (axis) {
      case X -> x;
      case Y -> y;
      case Z -> z;
    };
  }

  /** This box translated by (dx, dy) in the table plane. */
  public Box at(long dx, long dy) {
    return new Box(x.plus(dx), y.plus(dy), z);
  }

  /** The largest, over x, y and z, of the signed interval distances; see {@link Interval#gapTo}. */
  public long gapTo(Box other) {
    return Math.max(x.gapTo(other.x), Math.max(y.gapTo(other.y), z.gapTo(other.z)));
  }

  /** The axis that yields {@link #gapTo}; ties go to y, then x, then z. */
  public Axis gapAxis(Box other) {
    long gap = gapTo(other);
    if (y.gapTo(other.y) == gap) {
      return Axis.Y;
    }
    return x.gapTo(other.x) == gap ? Axis.X : Axis.Z;
  }
}
