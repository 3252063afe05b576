package org.jawroom.reference.space;

import org.jawroom.geometry.Orientation;

/** The table of turns as direction vectors: where u and v point in the table frame. */
public record Facing(int ux, int uy, int vx, int vy) {

  public static Facing of(Orientation turn) {
    return switch (turn) {
      case FRONT -> new Facing(0, -1, 1, 0);
      case RIGHT -> new Facing(1, 0, 0, 1);
      case REAR -> new Facing(0, 1, -1, 0);
      case LEFT -> new Facing(-1, 0, 0, -1);
    };
  }

  public long x(long u, long v) {
    return ux * u + vx * v;
  }

  public long y(long u, long v) {
    return uy * u + vy * v;
  }

  public Span x(Span u, Span v) {
    Span along = ux != 0 ? u : v;
    return ux + vx > 0 ? along : along.negated();
  }

  public Span y(Span u, Span v) {
    Span along = uy != 0 ? u : v;
    return uy + vy > 0 ? along : along.negated();
  }

  /** Whether the jaws open along x. */
  public boolean alongX() {
    return ux != 0;
  }

  /** The sign of u on its axis. */
  public int sign() {
    return ux + uy;
  }
}
