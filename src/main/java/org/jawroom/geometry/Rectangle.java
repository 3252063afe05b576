package org.jawroom.geometry;

import java.util.Optional;

/** A closed axis-aligned rectangle in the table plane; never empty, possibly a point. */
public record Rectangle(Interval x, Interval y) {

  public Interval along(Axis axis) {
    if (axis == Axis.Z) {
      throw new IllegalArgumentException("a rectangle has no z");
    }
    return axis == Axis.X ? x : y;
  }

  /**
   * The rectangle with extent {@code along} on {@code axis} (X or Y) and {@code across} on the
   * other axis.
   */
  public static Rectangle of(Axis axis, Interval along, Interval across) {
    return axis == Axis.X ? new Rectangle(along, across) : new Rectangle(across, along);
  }

  public Rectangle at(long dx, long dy) {
    return new Rectangle(x.plus(dx), y.plus(dy));
  }

  public boolean contains(long px, long py) {
    return x.contains(px) && y.contains(py);
  }

  /** The intersection; empty if they have no point in common. */
  public Optional<Rectangle> meet(Rectangle other) {
    return x.meet(other.x)
        .flatMap(both -> y.meet(other.y).map(height -> new Rectangle(both, height)));
  }

  /**
   * The largest amount by which {@code inner}, translated by (dx, dy), protrudes from this
   * rectangle on any side; 0 if it is contained.
   */
  public long shortfall(Rectangle inner, long dx, long dy) {
    long inX = Math.max(x.lo() - inner.x.lo() - dx, inner.x.hi() + dx - x.hi());
    long inY = Math.max(y.lo() - inner.y.lo() - dy, inner.y.hi() + dy - y.hi());
    return Math.max(0, Math.max(inX, inY));
  }
}
