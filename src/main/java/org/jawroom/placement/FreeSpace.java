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
  private final Strips strips;
  private final long bound;
  private long[] near;

  FreeSpace(List<Rectangle> places, Obstacles obstacles) {
    this(Strips.of(places, obstacles), obstacles, Length.ENDLESS);
  }

  private FreeSpace(Strips strips, Obstacles obstacles, long cap) {
    this.strips = strips;
    this.obstacles = obstacles;
    this.bound = Math.min(cap, strips.bound());
  }

  /**
   * The obstacles that matter here; found when first asked for, since often the walls alone decide.
   */
  private long[] near() {
    if (near == null) {
      Interval p = strips.alongP();
      Interval q = strips.alongQ();
      near =
          strips.alongX
              ? obstacles.within(Axis.X, p, q, bound)
              : obstacles.within(Axis.Y, q, p, bound);
    }
    return near;
  }

  /**
   * The same for questions that are decided below 0: whether some place has margin ≥ 0 and, where
   * none has, everything else. It leaves out what is never hit, so a margin above 0 may be less.
   */
  static FreeSpace belowZero(List<Rectangle> places, Obstacles obstacles) {
    return new FreeSpace(Strips.of(places, obstacles), obstacles, 0);
  }

  /** What was made for questions decided below 0, made for all. */
  FreeSpace aboveZero() {
    return bound == strips.bound() ? this : new FreeSpace(strips, obstacles, Length.ENDLESS);
  }

  /** Whether (x, y) is a place of the region, whatever its margin. */
  boolean holds(long x, long y) {
    return strips.hold(x, y);
  }

  /** The margin at a place of the region; {@link Length#ENDLESS} if nothing can be hit. */
  long margin(long x, long y) {
    long[] near = near();
    long p = strips.alongX ? x : y;
    long q = strips.alongX ? y : x;
    long least = strips.margin(p, q);
    for (int i = 0; i < near.length; i += STRIDE) {
      long beside =
          Math.max(
              Math.max(near[i] - p, p - near[i + 1]), Math.max(near[i + 2] - q, q - near[i + 3]));
      least = Math.min(least, Math.max(beside, near[i + 4]));
    }
    return least;
  }

  /**
   * What limits a place, tolerances and all; empty if nothing can be hit.
   *
   * @param margin there, as it was found
   * @throws IllegalStateException if no pair makes it so, which would show the search to be wrong
   */
  Optional<Limit> limit(Place place, long margin) {
    Optional<Limit> limit = obstacles.limit(place.x(), place.y(), margin);
    long made = limit.map(Limit::margin).orElse(Length.ENDLESS);
    if (made != margin) {
      throw new IllegalStateException(
          "the margin at "
              + place
              + " was found to be "
              + margin
              + ", but a pair makes it "
              + made);
    }
    return limit;
  }

  /** No margin anywhere is greater than this. */
  long bound() {
    return bound;
  }

  /**
   * Some place in {@code window} with margin ≥ {@code margin}, always the same for the same
   * question; null if there is none.
   */
  Place find(long margin, Window window) {
    if (margin > bound) {
      return null;
    }
    long pLo = Math.max(strips.pLo(window), strips.pLeast + margin);
    long pHi = Math.min(strips.pHi(window), strips.pMost - margin);
    long qLo = Math.max(strips.qLo(window), strips.qLeast + margin);
    long qHi = Math.min(strips.qHi(window), strips.qMost - margin);
    if (pLo > pHi || qLo > qHi) {
      return null;
    }
    long[] ends = strips.ends;
    for (int i = 0; i < ends.length; i += 4) {
      Place found =
          find(
              margin,
              Math.max(ends[i], pLo),
              Math.min(ends[i + 1], pHi),
              Math.max(ends[i + 2], qLo),
              Math.min(ends[i + 3], qHi));
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
      return strips.place(p, qLo);
    }
    for (int i = 0; i < near.length; i += STRIDE) {
      long q = near[i + 3] + t;
      if (q > qLo && q <= qHi && near[i + 4] < t) {
        p = leastFree(t, pLo, pHi, q);
        if (p <= pHi) {
          return strips.place(p, q);
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
    return strips.likely(window);
  }

  /**
   * The rectangle of places around a place with margin ≥ {@code margin} in which every obstacle
   * stays on the side on which it is now farthest off, within {@code window}.
   */
  Window around(Place place, long margin, Window window) {
    long[] near = near();
    long p = strips.alongX ? place.x() : place.y();
    long q = strips.alongX ? place.y() : place.x();
    int strip = strips.at(p, q);
    long pLo = Math.max(Math.max(strips.ends[strip], strips.pLo(window)), strips.pLeast + margin);
    long pHi =
        Math.min(Math.min(strips.ends[strip + 1], strips.pHi(window)), strips.pMost - margin);
    long qLo =
        Math.max(Math.max(strips.ends[strip + 2], strips.qLo(window)), strips.qLeast + margin);
    long qHi =
        Math.min(Math.min(strips.ends[strip + 3], strips.qHi(window)), strips.qMost - margin);
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
    return strips.alongX ? new Window(pLo, pHi, qLo, qHi) : new Window(qLo, qHi, pLo, pHi);
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
    long p = strips.alongX ? from.x() : from.y();
    long q = strips.alongX ? from.y() : from.x();
    int strip = strips.at(p, q);
    long pBefore = strips.pLeast;
    long pAfter = strips.pMost;
    long qBefore = strips.qLeast;
    long qAfter = strips.qMost;
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
    long pLo = Math.max(strips.ends[strip], strips.pLo(window));
    long pHi = Math.min(strips.ends[strip + 1], strips.pHi(window));
    long qLo = Math.max(strips.ends[strip + 2], strips.qLo(window));
    long qHi = Math.min(strips.ends[strip + 3], strips.qHi(window));
    return strips.place(
        Strips.middle(pLo, pHi, pBefore, pAfter), Strips.middle(qLo, qHi, qBefore, qAfter));
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
    long p = strips.alongX ? place.x() : place.y();
    long q = strips.alongX ? place.y() : place.x();
    Interval alongP = strips.alongX ? allowed.x() : allowed.y();
    Interval alongQ = strips.alongX ? allowed.y() : allowed.x();
    long pLo = Math.max(alongP.lo(), strips.pLeast);
    long pHi = Math.min(alongP.hi(), strips.pMost);
    long qLo = Math.max(alongQ.lo(), strips.qLeast);
    long qHi = Math.min(alongQ.hi(), strips.qMost);
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
    return strips.alongX
        ? new Play(p - pLo, pHi - p, q - qLo, qHi - q)
        : new Play(q - qLo, qHi - q, p - pLo, pHi - p);
  }
}
