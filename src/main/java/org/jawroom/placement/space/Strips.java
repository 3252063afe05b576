package org.jawroom.placement.space;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.IntervalSet;
import org.jawroom.geometry.Rectangle;

/**
 * The positions at which a mount holds: at least one closed strip, side by side, of equal length. p
 * runs along the strips and q across them, so that slots along y need no special case.
 */
public final class Strips {
  final boolean alongX;
  final long pLo;
  final long pHi;

  /**
   * Alternating least and greatest q of the strips, ascending and disjoint; must not be modified.
   */
  final long[] q;

  private final IntervalSet strips;

  private Strips(boolean alongX, long pLo, long pHi, IntervalSet strips) {
    this.alongX = alongX;
    this.pLo = pLo;
    this.pHi = pHi;
    this.q = strips.ends();
    this.strips = strips;
  }

  /**
   * Strips along {@code along} (X or Y).
   *
   * @param q their extents across
   * @throws IllegalArgumentException if there is no position
   */
  public static Strips of(Axis along, long pLo, long pHi, IntervalSet q) {
    if (pLo > pHi || q.isEmpty()) {
      throw new IllegalArgumentException("no position in strips from " + pLo + " to " + pHi);
    }
    return new Strips(along == Axis.X, pLo, pHi, q);
  }

  /** A single strip that is a rectangle. */
  public static Strips of(Axis along, Rectangle places) {
    Interval p = places.along(along);
    Interval q = places.along(along.across());
    return of(along, p.lo(), p.hi(), IntervalSet.of(q.lo(), q.hi()));
  }

  /** Each strip as a closed rectangle. */
  public List<Rectangle> rectangles() {
    Axis along = alongX ? Axis.X : Axis.Y;
    Interval p = Interval.of(pLo, pHi);
    List<Rectangle> all = new ArrayList<>(q.length / 2);
    for (int i = 0; i < q.length; i += 2) {
      all.add(Rectangle.of(along, p, Interval.of(q[i], q[i + 1])));
    }
    return List.copyOf(all);
  }

  /** Where the places lie along an axis (X or Y), whatever their other coordinate. */
  public IntervalSet along(Axis axis) {
    return (axis == Axis.X) == alongX ? IntervalSet.of(pLo, pHi) : strips;
  }

  /** What they have in common with a rectangle; empty if they have no point in common. */
  public Optional<Strips> meet(Rectangle other) {
    Axis along = alongX ? Axis.X : Axis.Y;
    Interval p = other.along(along);
    long lo = Math.max(pLo, p.lo());
    long hi = Math.min(pHi, p.hi());
    Interval across = other.along(along.across());
    if (lo == pLo && hi == pHi && across.lo() <= q[0] && q[q.length - 1] <= across.hi()) {
      return Optional.of(this);
    }
    IntervalSet both = strips.meet(IntervalSet.of(across.lo(), across.hi()));
    return lo > hi || both.isEmpty() ? Optional.empty() : Optional.of(of(along, lo, hi, both));
  }

  /** Whether (x, y) is one of the positions. */
  boolean hold(long x, long y) {
    long p = alongX ? x : y;
    long across = alongX ? y : x;
    return pLo <= p && p <= pHi && strips.contains(across);
  }

  /** The index in {@link #q} at which the strip of a contained position begins. */
  int at(long across) {
    int i = 0;
    while (q[i + 1] < across) {
      i += 2;
    }
    return i;
  }

  Place place(long p, long across) {
    return alongX ? new Place(p, across) : new Place(across, p);
  }

  long pLo(Window window) {
    return Math.max(pLo, alongX ? window.xLo() : window.yLo());
  }

  long pHi(Window window) {
    return Math.min(pHi, alongX ? window.xHi() : window.yHi());
  }

  long qLo(Window window) {
    return alongX ? window.yLo() : window.xLo();
  }

  long qHi(Window window) {
    return alongX ? window.yHi() : window.xHi();
  }

  @Override
  public String toString() {
    return rectangles().toString();
  }
}
