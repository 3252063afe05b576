package org.jawroom.placement;

import java.util.List;
import java.util.Optional;
import org.jawroom.clearance.Limit;
import org.jawroom.clearance.Obstacles;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Length;
import org.jawroom.geometry.Rectangle;

/**
 * Where a vise may stand: the places at which its mount holds, less what its walls and obstacles
 * forbid.
 *
 * <p>The places with margin ≥ t are closed rectangles within the walls, less one open rectangle (a
 * − t, b + t) × (c − t, d + t) for each obstacle with f &lt; t (Lozano-Pérez, Spatial Planning,
 * IEEE Trans. Computers C-32(2), 1983). Bolts leave strips, long along the slots and thin across
 * them; so p runs along the strips and q across. If any place of a rectangle is free, then one with
 * the least q, which is at its lower side or at the far side of an obstacle; at each such q one
 * pass over the obstacles in the order of a, which is the same for every t, finds the least free p.
 * O(n·k) for n obstacles of which k end within a strip.
 */
final class FreeSpace {
  private static final int STRIDE = Obstacles.STRIDE;

  /** The sides of an obstacle: less p than it, more p, less q, more q. */
  private static final int BEFORE = 0;

  private static final int BEHIND = 1;
  private static final int BELOW = 2;
  private static final int ABOVE = 3;
  private static final int NEITHER = 4;

  private final Obstacles obstacles;
  private final boolean alongX;
  private final long[] strips;
  private final long pLeast;
  private final long pMost;
  private final long qLeast;
  private final long qMost;
  private long[] near;
  private final long wallBound;
  private final long bound;

  FreeSpace(List<Rectangle> places, Obstacles obstacles) {
    this(places, obstacles, Length.ENDLESS);
  }

  private FreeSpace(List<Rectangle> places, Obstacles obstacles, long cap) {
    Axis along = alongStrips(places);
    this.obstacles = obstacles;
    this.alongX = along == Axis.X;
    this.pLeast = alongX ? obstacles.left() : obstacles.front();
    this.pMost = alongX ? obstacles.right() : obstacles.rear();
    this.qLeast = alongX ? obstacles.front() : obstacles.left();
    this.qMost = alongX ? obstacles.rear() : obstacles.right();
    this.strips = new long[4 * places.size()];
    for (int i = 0; i < places.size(); i++) {
      Interval p = places.get(i).along(along);
      Interval q = places.get(i).along(along.across());
      strips[4 * i] = p.lo();
      strips[4 * i + 1] = p.hi();
      strips[4 * i + 2] = q.lo();
      strips[4 * i + 3] = q.hi();
    }
    this.wallBound = wallBound(Window.EVERYWHERE);
    this.bound = Math.min(cap, wallBound);
  }

  /** The same with all that matters above 0, too. */
  private FreeSpace(FreeSpace capped) {
    this.obstacles = capped.obstacles;
    this.alongX = capped.alongX;
    this.pLeast = capped.pLeast;
    this.pMost = capped.pMost;
    this.qLeast = capped.qLeast;
    this.qMost = capped.qMost;
    this.strips = capped.strips;
    this.wallBound = capped.wallBound;
    this.bound = capped.wallBound;
  }

  /**
   * The obstacles that matter here; found when first asked for, since often the walls alone decide.
   */
  private long[] near() {
    if (near == null) {
      long pLo = Long.MAX_VALUE;
      long pHi = Long.MIN_VALUE;
      long qLo = Long.MAX_VALUE;
      long qHi = Long.MIN_VALUE;
      for (int i = 0; i < strips.length; i += 4) {
        pLo = Math.min(pLo, strips[i]);
        pHi = Math.max(pHi, strips[i + 1]);
        qLo = Math.min(qLo, strips[i + 2]);
        qHi = Math.max(qHi, strips[i + 3]);
      }
      Interval p = Interval.of(pLo, pHi);
      Interval q = Interval.of(qLo, qHi);
      near = alongX ? obstacles.within(Axis.X, p, q, bound) : obstacles.within(Axis.Y, q, p, bound);
    }
    return near;
  }

  /**
   * The same for questions that are decided below 0: whether some place has margin ≥ 0 and, where
   * none has, everything else. It leaves out what is never hit, so a margin above 0 may be less.
   */
  static FreeSpace belowZero(List<Rectangle> places, Obstacles obstacles) {
    return new FreeSpace(places, obstacles, 0);
  }

  /** What was made for questions decided below 0, made for all. */
  FreeSpace aboveZero() {
    return wallBound == bound ? this : new FreeSpace(this);
  }

  private static Axis alongStrips(List<Rectangle> places) {
    Rectangle first = places.get(0);
    return first.x().length() >= first.y().length() ? Axis.X : Axis.Y;
  }

  /** Whether (x, y) is a place of the region, whatever its margin. */
  boolean holds(long x, long y) {
    long p = alongX ? x : y;
    long q = alongX ? y : x;
    for (int i = 0; i < strips.length; i += 4) {
      if (strips[i] <= p && p <= strips[i + 1] && strips[i + 2] <= q && q <= strips[i + 3]) {
        return true;
      }
    }
    return false;
  }

  /** The margin at a place of the region; {@link Length#ENDLESS} if nothing can be hit. */
  long margin(long x, long y) {
    long[] near = near();
    long p = alongX ? x : y;
    long q = alongX ? y : x;
    long least = wallMargin(p, q);
    for (int i = 0; i < near.length; i += STRIDE) {
      long beside =
          Math.max(
              Math.max(near[i] - p, p - near[i + 1]), Math.max(near[i + 2] - q, q - near[i + 3]));
      least = Math.min(least, Math.max(beside, near[i + 4]));
    }
    return least;
  }

  private long wallMargin(long p, long q) {
    return Math.min(
        Length.ENDLESS, Math.min(Math.min(p - pLeast, pMost - p), Math.min(q - qLeast, qMost - q)));
  }

  /**
   * What limits a place, tolerances and all; empty if nothing can be hit.
   *
   * @param margin there, as it was found
   * @throws IllegalStateException if nothing is so near
   */
  Optional<Limit> limit(Place place, long margin) {
    Optional<Limit> limit = obstacles.limit(place.x(), place.y(), margin);
    if (limit.isEmpty() && margin < Length.ENDLESS) {
      throw new IllegalStateException("nothing makes the margin " + margin + " at " + place);
    }
    return limit;
  }

  /** No margin anywhere is greater than this. */
  long bound() {
    return bound;
  }

  /** No margin in {@code window} is greater than this; below every margin if no place is in it. */
  long wallBound(Window window) {
    long most = -4 * (Length.ENDLESS / 2);
    for (int i = 0; i < strips.length; i += 4) {
      long pLo = Math.max(strips[i], pLo(window));
      long pHi = Math.min(strips[i + 1], pHi(window));
      long qLo = Math.max(strips[i + 2], qLo(window));
      long qHi = Math.min(strips[i + 3], qHi(window));
      if (pLo <= pHi && qLo <= qHi) {
        long between =
            Math.min(mostBetween(pLo, pHi, pLeast, pMost), mostBetween(qLo, qHi, qLeast, qMost));
        most = Math.max(most, Math.min(Length.ENDLESS, between));
      }
    }
    return most;
  }

  /** The largest min(at − least, most − at) of a whole {@code at} from lo to hi. */
  static long mostBetween(long lo, long hi, long least, long most) {
    return Math.min(Math.floorDiv(most - least, 2), Math.min(hi - least, most - lo));
  }

  /**
   * Some place in {@code window} with margin ≥ {@code margin}, always the same for the same
   * question; null if there is none.
   */
  Place find(long margin, Window window) {
    if (margin > bound) {
      return null;
    }
    for (int i = 0; i < strips.length; i += 4) {
      Place found =
          find(
              margin,
              Math.max(Math.max(strips[i], pLo(window)), pLeast + margin),
              Math.min(Math.min(strips[i + 1], pHi(window)), pMost - margin),
              Math.max(Math.max(strips[i + 2], qLo(window)), qLeast + margin),
              Math.min(Math.min(strips[i + 3], qHi(window)), qMost - margin));
      if (found != null) {
        return found;
      }
    }
    return null;
  }

  boolean isClear(long margin, Window window) {
    return find(margin, window) != null;
  }

  private Place find(long t, long pLo, long pHi, long qLo, long qHi) {
    if (pLo > pHi || qLo > qHi) {
      return null;
    }
    long[] near = near();
    long p = leastFree(t, pLo, pHi, qLo);
    if (p <= pHi) {
      return place(p, qLo);
    }
    for (int i = 0; i < near.length; i += STRIDE) {
      long q = near[i + 3] + t;
      if (q > qLo && q <= qHi && near[i + 4] < t) {
        p = leastFree(t, pLo, pHi, q);
        if (p <= pHi) {
          return place(p, q);
        }
      }
    }
    return null;
  }

  /** The least free p from {@code pLo} on at {@code q}; more than {@code pHi} if there is none. */
  private long leastFree(long t, long pLo, long pHi, long q) {
    long[] near = near();
    long p = pLo;
    for (int i = 0; i < near.length && near[i] - t < p && p <= pHi; i += STRIDE) {
      if (near[i + 4] < t && near[i + 2] - t < q && q < near[i + 3] + t) {
        p = Math.max(p, near[i + 1] + t);
      }
    }
    return p;
  }

  /** The place in {@code window} farthest from the walls, of the first strip that has it. */
  Place likely(Window window) {
    Place best = null;
    long most = Long.MIN_VALUE;
    for (int i = 0; i < strips.length; i += 4) {
      long pLo = Math.max(strips[i], pLo(window));
      long pHi = Math.min(strips[i + 1], pHi(window));
      long qLo = Math.max(strips[i + 2], qLo(window));
      long qHi = Math.min(strips[i + 3], qHi(window));
      if (pLo <= pHi && qLo <= qHi) {
        long p = middle(pLo, pHi, pLeast, pMost);
        long q = middle(qLo, qHi, qLeast, qMost);
        if (wallMargin(p, q) > most) {
          most = wallMargin(p, q);
          best = place(p, q);
        }
      }
    }
    return best;
  }

  /**
   * The rectangle of places around a place with margin ≥ {@code margin} in which every obstacle
   * stays on the side on which it is now farthest off, within {@code window}.
   */
  Window around(Place place, long margin, Window window) {
    long[] near = near();
    long p = alongX ? place.x() : place.y();
    long q = alongX ? place.y() : place.x();
    int strip = strip(p, q);
    long pLo = Math.max(Math.max(strips[strip], pLo(window)), pLeast + margin);
    long pHi = Math.min(Math.min(strips[strip + 1], pHi(window)), pMost - margin);
    long qLo = Math.max(Math.max(strips[strip + 2], qLo(window)), qLeast + margin);
    long qHi = Math.min(Math.min(strips[strip + 3], qHi(window)), qMost - margin);
    for (int i = 0; i < near.length; i += STRIDE) {
      if (near[i + 4] >= margin) {
        continue;
      }
      switch (farthest(i, p, q, Long.MIN_VALUE)) {
        case BEFORE -> pHi = Math.min(pHi, near[i] - margin);
        case BEHIND -> pLo = Math.max(pLo, near[i + 1] + margin);
        case BELOW -> qHi = Math.min(qHi, near[i + 2] - margin);
        default -> qLo = Math.max(qLo, near[i + 3] + margin);
      }
    }
    return alongX ? new Window(pLo, pHi, qLo, qHi) : new Window(qLo, qHi, pLo, pHi);
  }

  /**
   * A place in {@code window} with the largest margin to which one can go from {@code start}
   * without taking any obstacle on another side than that on which it is farthest off, as often as
   * that helps.
   */
  Spot climbed(Place start, Window window) {
    Place at = start;
    long margin = margin(at.x(), at.y());
    while (margin < bound) {
      Place next = step(at, window);
      long then = margin(next.x(), next.y());
      if (then <= margin) {
        break;
      }
      at = next;
      margin = then;
    }
    return new Spot(at, margin);
  }

  private Place step(Place from, Window window) {
    long[] near = near();
    long p = alongX ? from.x() : from.y();
    long q = alongX ? from.y() : from.x();
    int strip = strip(p, q);
    long pBefore = pLeast;
    long pAfter = pMost;
    long qBefore = qLeast;
    long qAfter = qMost;
    for (int i = 0; i < near.length; i += STRIDE) {
      switch (farthest(i, p, q, near[i + 4])) {
        case BEFORE -> pAfter = Math.min(pAfter, near[i]);
        case BEHIND -> pBefore = Math.max(pBefore, near[i + 1]);
        case BELOW -> qAfter = Math.min(qAfter, near[i + 2]);
        case ABOVE -> qBefore = Math.max(qBefore, near[i + 3]);
        default -> {
          // It is clear in height by more than beside it.
        }
      }
    }
    long pLo = Math.max(strips[strip], pLo(window));
    long pHi = Math.min(strips[strip + 1], pHi(window));
    long qLo = Math.max(strips[strip + 2], qLo(window));
    long qHi = Math.min(strips[strip + 3], qHi(window));
    return place(middle(pLo, pHi, pBefore, pAfter), middle(qLo, qHi, qBefore, qAfter));
  }

  /** Where min(at − before, after − at) is largest. */
  private static long middle(long lo, long hi, long before, long after) {
    long middle = before + Math.floorDiv(after - before, 2);
    return Math.max(lo, Math.min(hi, middle));
  }

  /** The side of an obstacle on which (p, q) is farthest off; none if by no more than {@code f}. */
  private int farthest(int i, long p, long q, long f) {
    long[] near = near();
    int side = NEITHER;
    long most = f;
    if (near[i] - p > most) {
      most = near[i] - p;
      side = BEFORE;
    }
    if (p - near[i + 1] > most) {
      most = p - near[i + 1];
      side = BEHIND;
    }
    if (near[i + 2] - q > most) {
      most = near[i + 2] - q;
      side = BELOW;
    }
    return q - near[i + 3] > most ? ABOVE : side;
  }

  /**
   * How far the vise could go straight each way from a place with margin ≥ 0.
   *
   * @param allowed places of this space at which its bolts stand in the slots reported and no
   *     overhang is too great
   */
  Play play(Place place, Rectangle allowed) {
    long[] near = near();
    long p = alongX ? place.x() : place.y();
    long q = alongX ? place.y() : place.x();
    Interval alongP = alongX ? allowed.x() : allowed.y();
    Interval alongQ = alongX ? allowed.y() : allowed.x();
    long pLo = Math.max(alongP.lo(), pLeast);
    long pHi = Math.min(alongP.hi(), pMost);
    long qLo = Math.max(alongQ.lo(), qLeast);
    long qHi = Math.min(alongQ.hi(), qMost);
    for (int i = 0; i < near.length; i += STRIDE) {
      // The open rectangle (a, b) × (c, d) is what it forbids, if it forbids anything.
      if (near[i + 4] >= 0 || near[i] >= near[i + 1] || near[i + 2] >= near[i + 3]) {
        continue;
      }
      if (near[i + 2] < q && q < near[i + 3]) {
        if (near[i + 1] <= p) {
          pLo = Math.max(pLo, near[i + 1]);
        } else {
          pHi = Math.min(pHi, near[i]);
        }
      }
      if (near[i] < p && p < near[i + 1]) {
        if (near[i + 3] <= q) {
          qLo = Math.max(qLo, near[i + 3]);
        } else {
          qHi = Math.min(qHi, near[i + 2]);
        }
      }
    }
    return alongX
        ? new Play(p - pLo, pHi - p, q - qLo, qHi - q)
        : new Play(q - qLo, qHi - q, p - pLo, pHi - p);
  }

  private int strip(long p, long q) {
    int i = 0;
    while (strips[i] > p || p > strips[i + 1] || strips[i + 2] > q || q > strips[i + 3]) {
      i += 4;
    }
    return i;
  }

  private Place place(long p, long q) {
    return alongX ? new Place(p, q) : new Place(q, p);
  }

  private long pLo(Window window) {
    return alongX ? window.xLo() : window.yLo();
  }

  private long pHi(Window window) {
    return alongX ? window.xHi() : window.yHi();
  }

  private long qLo(Window window) {
    return alongX ? window.yLo() : window.xLo();
  }

  private long qHi(Window window) {
    return alongX ? window.yHi() : window.xHi();
  }
}
