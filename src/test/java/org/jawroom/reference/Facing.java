package org.jawroom.reference;

import org.jawroom.geometry.Orientation;

/** The table of turns as direction vectors: where u and v point in the table frame. */
record Facing(int ux, int uy, int vx, int vy) {

  static Facing of(Orientation turn) {
    return switch (turn) {
      case FRONT -> new Facing(0, -1, 1, 0);
      case RIGHT -> new Facing(1, 0, 0, 1);
      case REAR -> new Facing(0, 1, -1, 0);
      case LEFT -> new Facing(-1, 0, 0, -1);
    };
  }

  long x(long u, long v) {
    return ux * u + vx * v;
  }

  long y(long u, long v) {
    return uy * u + vy * v;
  }

  Span x(Span u, Span v) {
    long a = x(u.lo(), v.lo());
    long b = x(u.hi(), v.hi());
    return new Span(Math.min(a, b), Math.max(a, b));
  }

  Span y(Span u, Span v) {
    long a = y(u.lo(), v.lo());
    long b = y(u.hi(), v.hi());
    return new Span(Math.min(a, b), Math.max(a, b));
  }

  /** Whether the jaws open along x. */
  boolean alongX() {
    return ux != 0;
  }

  /** The sign of u on its axis. */
  int sign() {
    return ux + uy;
  }
}
