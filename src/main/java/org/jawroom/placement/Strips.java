package org.jawroom.placement;

import java.util.List;
import org.jawroom.clearance.Obstacles;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Length;
import org.jawroom.geometry.Rectangle;

/**
 * The places at which a mount holds, as strips between walls. p runs along the strips, q across
 * them, so that slots along y are no special case.
 */
final class Strips {
  final boolean alongX;

  /** Of each strip the least and the greatest p, then q; for reading only. */
  final long[] ends;

  /** Where a wall keeps off whatever is less; likewise the others. */
  final long pLeast;

  final long pMost;
  final long qLeast;
  final long qMost;
  private final long bound;

  private Strips(List<Rectangle> places, Obstacles obstacles) {
    Axis along = along(places);
    this.alongX = along == Axis.X;
    this.pLeast = alongX ? obstacles.left() : obstacles.front();
    this.pMost = alongX ? obstacles.right() : obstacles.rear();
    this.qLeast = alongX ? obstacles.front() : obstacles.left();
    this.qMost = alongX ? obstacles.rear() : obstacles.right();
    this.ends = new long[4 * places.size()];
    for (int i = 0; i < places.size(); i++) {
      Interval p = places.get(i).along(along);
      Interval q = places.get(i).along(along.across());
      ends[4 * i] = p.lo();
      ends[4 * i + 1] = p.hi();
      ends[4 * i + 2] = q.lo();
      ends[4 * i + 3] = q.hi();
    }
    this.bound = mostBetweenWalls();
  }

  /**
   * The strips of a region.
   *
   * @param places one at least
   * @param obstacles whose walls count
   */
  static Strips of(List<Rectangle> places, Obstacles obstacles) {
    return new Strips(places, obstacles);
  }

  private static Axis along(List<Rectangle> places) {
    Rectangle first = places.get(0);
    return first.x().length() >= first.y().length() ? Axis.X : Axis.Y;
  }

  /** The walls let no margin anywhere be greater than this. */
  long bound() {
    return bound;
  }

  /** From the least p of any strip to the greatest. */
  Interval alongP() {
    return hull(0);
  }

  /** Likewise across. */
  Interval alongQ() {
    return hull(2);
  }

  private Interval hull(int end) {
    long lo = Long.MAX_VALUE;
    long hi = Long.MIN_VALUE;
    for (int i = end; i < ends.length; i += 4) {
      lo = Math.min(lo, ends[i]);
      hi = Math.max(hi, ends[i + 1]);
    }
    return Interval.of(lo, hi);
  }

  /** Whether (x, y) is a place of the region, whatever its margin. */
  boolean hold(long x, long y) {
    long p = alongX ? x : y;
    long q = alongX ? y : x;
    for (int i = 0; i < ends.length; i += 4) {
      if (ends[i] <= p && p <= ends[i + 1] && ends[i + 2] <= q && q <= ends[i + 3]) {
        return true;
      }
    }
    return false;
  }

  /** The margin between the walls. */
  long margin(long p, long q) {
    return Math.min(
        Length.ENDLESS, Math.min(Math.min(p - pLeast, pMost - p), Math.min(q - qLeast, qMost - q)));
  }

  private long mostBetweenWalls() {
    long most = Long.MIN_VALUE;
    for (int i = 0; i < ends.length; i += 4) {
      long alongP = mostBetween(ends[i], ends[i + 1], pLeast, pMost);
      long alongQ = mostBetween(ends[i + 2], ends[i + 3], qLeast, qMost);
      most = Math.max(most, Math.min(Length.ENDLESS, Math.min(alongP, alongQ)));
    }
    return most;
  }

  /** The largest min(at − least, most − at) of a whole {@code at} from lo to hi. */
  private static long mostBetween(long lo, long hi, long least, long most) {
    return Math.min(Math.floorDiv(most - least, 2), Math.min(hi - least, most - lo));
  }

  /** The place in {@code window} farthest from the walls, of the first strip that has it. */
  Place likely(Window window) {
    Place best = null;
    long most = Long.MIN_VALUE;
    for (int i = 0; i < ends.length; i += 4) {
      long pLo = Math.max(ends[i], pLo(window));
      long pHi = Math.min(ends[i + 1], pHi(window));
      long qLo = Math.max(ends[i + 2], qLo(window));
      long qHi = Math.min(ends[i + 3], qHi(window));
      if (pLo <= pHi && qLo <= qHi) {
        long p = middle(pLo, pHi, pLeast, pMost);
        long q = middle(qLo, qHi, qLeast, qMost);
        if (margin(p, q) > most) {
          most = margin(p, q);
          best = place(p, q);
        }
      }
    }
    return best;
  }

  /** Where min(at − before, after − at) is largest. */
  static long middle(long lo, long hi, long before, long after) {
    long middle = before + Math.floorDiv(after - before, 2);
    return Math.max(lo, Math.min(hi, middle));
  }

  /** Where the strip of a place begins in {@link #ends}. */
  int at(long p, long q) {
    int i = 0;
    while (ends[i] > p || p > ends[i + 1] || ends[i + 2] > q || q > ends[i + 3]) {
      i += 4;
    }
    return i;
  }

  Place place(long p, long q) {
    return alongX ? new Place(p, q) : new Place(q, p);
  }

  long pLo(Window window) {
    return alongX ? window.xLo() : window.yLo();
  }

  long pHi(Window window) {
    return alongX ? window.xHi() : window.yHi();
  }

  long qLo(Window window) {
    return alongX ? window.yLo() : window.xLo();
  }

  long qHi(Window window) {
    return alongX ? window.yHi() : window.xHi();
  }
}
