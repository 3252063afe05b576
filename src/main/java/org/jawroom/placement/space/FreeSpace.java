package org.jawroom.placement.space;

import java.util.Optional;
import org.jawroom.clearance.gap.Limit;
import org.jawroom.clearance.obstacle.Obstacles;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.IntervalSet;
import org.jawroom.geometry.Length;
import org.jawroom.geometry.Rectangle;

/**
 * The free positions of a vise: those at which its mount holds, less those that walls and obstacles
 * forbid.
 *
 * <p>The positions with margin ≥ t are closed strips within the walls, less one open rectangle (a −
 * t, b + t) × (c − t, d + t) per obstacle with f &lt; t (Lozano-Pérez, Spatial Planning, IEEE
 * Trans. Computers C-32(2), 1983). Bolts leave strips that are long along the slots and thin across
 * them, so p runs along the strips and q across. If a strip has a free position, one with the least
 * q lies at the strip's lower side or at the far side of an obstacle. At each such q a single sweep
 * over the obstacles in ascending order of a, an order that does not depend on t, finds the least
 * free p. The cost is O(n·k) for n obstacles of which k end within a strip.
 */
public final class FreeSpace {
  private static final int STRIDE = Obstacles.STRIDE;

  /** The side of an obstacle: smaller p, larger p, smaller q, larger q. */
  private static final int BEFORE = 0;

  private static final int BEHIND = 1;
  private static final int BELOW = 2;
  private static final int ABOVE = 3;
  private static final int NEITHER = 4;

  /** Below every margin: no tap room is asked for. */
  private static final long NO_TAP = -2 * Length.ENDLESS;

  private final Obstacles obstacles;
  private final Strips strips;
  private final Walls walls;
  private final long bound;
  private final long tap;

  /** Holds every position of this one, without tap room; this one itself if it was made anew. */
  private final FreeSpace whole;

  private long[] near;

  private FreeSpace(Strips strips, Walls walls, Obstacles obstacles, long bound) {
    this.strips = strips;
    this.walls = walls;
    this.obstacles = obstacles;
    this.bound = bound;
    this.tap = NO_TAP;
    this.whole = this;
  }

  private FreeSpace(Strips strips, long tap, FreeSpace whole) {
    this.strips = strips;
    this.walls = Walls.of(strips, whole.obstacles);
    this.obstacles = whole.obstacles;
    this.bound = walls.bound();
    this.tap = tap;
    this.whole = whole;
  }

  public static FreeSpace of(Strips places, Obstacles obstacles) {
    Walls walls = Walls.of(places, obstacles);
    return new FreeSpace(places, walls, obstacles, walls.bound());
  }

  /**
   * The positions at which the vise can be tapped square: whatever it could hit stays clear by
   * height, or lies at least {@code room} beyond its required clearance along x or y. Only margins
   * of 0 and more may be asked of it.
   *
   * @param held positions of this space, which has no tap room itself
   */
  public FreeSpace tapped(Strips held, long room) {
    return new FreeSpace(held, room, whole);
  }

  /** Its positions in a rectangle alone; empty if there are none. */
  public Optional<FreeSpace> within(Rectangle only) {
    return strips.meet(only).map(held -> new FreeSpace(held, tap, whole));
  }

  /** The space that this one was made from, of more positions and without tap room, or itself. */
  public FreeSpace whole() {
    return whole;
  }

  /**
   * The obstacles that can bind here; computed on first use, since the walls alone often decide.
   */
  private long[] near() {
    if (near == null && whole != this && Math.max(bound, tap) <= whole.bound) {
      near = whole.near();
    }
    if (near == null) {
      Interval p = Interval.of(strips.pLo, strips.pHi);
      Interval q = Interval.of(strips.q[0], strips.q[strips.q.length - 1]);
      near =
          strips.alongX
              ? obstacles.within(Axis.X, p, q, Math.max(bound, tap))
              : obstacles.within(Axis.Y, q, p, Math.max(bound, tap));
    }
    return near;
  }

  /**
   * A free space valid for decisions at or below 0: whether some position has margin ≥ 0, and
   * everything else if none has. Obstacles that are never hit are left out, so it may overstate a
   * margin above 0.
   */
  public static FreeSpace belowZero(Strips places, Obstacles obstacles) {
    Walls walls = Walls.of(places, obstacles);
    return new FreeSpace(places, walls, obstacles, Math.min(0, walls.bound()));
  }

  /** The same free space without the restriction of {@link #belowZero}. */
  public FreeSpace aboveZero() {
    return bound < 0 ? this : new FreeSpace(strips, walls, obstacles, walls.bound());
  }

  /** The margin at a position of the region; {@link Length#ENDLESS} if nothing can be hit. */
  public long margin(long x, long y) {
    long[] near = near();
    long p = strips.alongX ? x : y;
    long q = strips.alongX ? y : x;
    long least = walls.margin(p, q);
    for (int i = 0; i < near.length; i += STRIDE) {
      long beside =
          Math.max(
              Math.max(near[i] - p, p - near[i + 1]), Math.max(near[i + 2] - q, q - near[i + 3]));
      least = Math.min(least, Math.max(beside, near[i + 4]));
    }
    return least;
  }

  /**
   * The witness of the margin at a position, tolerances included; empty if nothing can be hit.
   *
   * @param margin the margin there, as found by the search
   * @throws IllegalStateException if no pair has that margin, which would prove a bug in the search
   */
  public Optional<Limit> limit(Place place, long margin) {
    Optional<Limit> limit = obstacles.limit(place.x(), place.y(), margin);
    long made = limit.map(Limit::margin).orElse(Length.ENDLESS);
    if (made != margin) {
      throw new IllegalStateException(
          "the search found margin " + margin + " at " + place + ", but the pairs yield " + made);
    }
    return limit;
  }

  /** An upper bound on the margin of every position. */
  public long bound() {
    return bound;
  }

  /**
   * A position in {@code window} with margin ≥ {@code margin}; null if there is none.
   * Deterministic.
   */
  public Place find(long margin, Window window) {
    if (margin > bound) {
      return null;
    }
    long off = Math.max(margin, tap);
    long pLo = Math.max(strips.pLo(window), walls.pLeast + off);
    long pHi = Math.min(strips.pHi(window), walls.pMost - off);
    long qLo = Math.max(strips.qLo(window), walls.qLeast + off);
    long qHi = Math.min(strips.qHi(window), walls.qMost - off);
    if (pLo > pHi || qLo > qHi) {
      return null;
    }
    long[] near = near();
    long[] q = strips.q;
    for (int i = 0; i < q.length; i += 2) {
      Place found = find(near, margin, pLo, pHi, Math.max(q[i], qLo), Math.min(q[i + 1], qHi));
      if (found != null) {
        return found;
      }
    }
    return null;
  }

  public boolean isClear(long margin, Window window) {
    return find(margin, window) != null;
  }

  private Place find(long[] near, long t, long pLo, long pHi, long qLo, long qHi) {
    if (qLo > qHi) {
      return null;
    }
    long p = leastFree(near, t, pLo, pHi, qLo);
    if (p <= pHi) {
      return strips.place(p, qLo);
    }
    for (int i = 0; i < near.length; i += STRIDE) {
      long q = near[i + 3] + off(near[i + 4], t);
      if (q > qLo && q <= qHi && near[i + 4] < t) {
        p = leastFree(near, t, pLo, pHi, q);
        if (p <= pHi) {
          return strips.place(p, q);
        }
      }
    }
    return null;
  }

  /** The least free p ≥ {@code pLo} at {@code q}; above {@code pHi} if there is none. */
  private long leastFree(long[] near, long t, long pLo, long pHi, long q) {
    long p = swept(near, t, pLo, pHi, q);
    // With tap room the obstacles' near sides need not ascend, so an earlier one may be met later.
    for (long next = p; tap != NO_TAP && p <= pHi && (next = swept(near, t, p, pHi, q)) > p; ) {
      p = next;
    }
    return p;
  }

  private long swept(long[] near, long t, long pLo, long pHi, long q) {
    long most = Math.max(t, tap);
    long p = pLo;
    for (int i = 0; i < near.length && near[i] - most < p && p <= pHi; i += STRIDE) {
      long off = off(near[i + 4], t);
      if (near[i + 4] < t && near[i] - off < p && near[i + 2] - off < q && q < near[i + 3] + off) {
        p = Math.max(p, near[i + 1] + off);
      }
    }
    return p;
  }

  /** How far off an obstacle must lie along p or q that is not at least {@code t} off in height. */
  private long off(long f, long t) {
    return f < 0 ? Math.max(t, tap) : t;
  }

  /**
   * The positions along the strips for which some position across them has margin ≥ {@code margin},
   * without tap room.
   */
  public IntervalSet along(long margin, Window window) {
    return margin > bound
        ? IntervalSet.of()
        : new AlongStrips(strips, walls, near(), margin).within(window);
  }

  /** A position in {@code window} to start a search from; null if there is none. */
  public Place first(Window window) {
    return tap == NO_TAP ? walls.likely(window) : find(0, window);
  }

  /**
   * A rectangle of positions with margin ≥ {@code margin} around such a position, within {@code
   * window}: each obstacle stays on the side on which it is farthest off at {@code place}.
   */
  public Window around(Place place, long margin, Window window) {
    long[] near = near();
    long p = strips.alongX ? place.x() : place.y();
    long q = strips.alongX ? place.y() : place.x();
    int strip = strips.at(q);
    long far = Math.max(margin, tap);
    long pLo = Math.max(strips.pLo(window), walls.pLeast + far);
    long pHi = Math.min(strips.pHi(window), walls.pMost - far);
    long qLo = Math.max(Math.max(strips.q[strip], strips.qLo(window)), walls.qLeast + far);
    long qHi = Math.min(Math.min(strips.q[strip + 1], strips.qHi(window)), walls.qMost - far);
    for (int i = 0; i < near.length; i += STRIDE) {
      if (near[i + 4] >= margin) {
        continue;
      }
      long off = off(near[i + 4], margin);
      switch (farthest(near, i, p, q, Long.MIN_VALUE)) {
        case BEFORE -> pHi = Math.min(pHi, near[i] - off);
        case BEHIND -> pLo = Math.max(pLo, near[i + 1] + off);
        case BELOW -> qHi = Math.min(qHi, near[i + 2] - off);
        default -> qLo = Math.max(qLo, near[i + 3] + off);
      }
    }
    return strips.alongX ? new Window(pLo, pHi, qLo, qHi) : new Window(qLo, qHi, pLo, pHi);
  }

  /**
   * Climbs from {@code start} within {@code window}: moves to the best position that keeps every
   * obstacle on the side on which it is farthest off, and repeats while the margin grows.
   */
  public Spot climbed(Place start, Window window) {
    Place at = start;
    long margin = margin(at.x(), at.y());
    while (margin < bound) {
      // With tap room a step could leave the positions at which the vise can be tapped square.
      Place next = step(at, tap == NO_TAP ? window : around(at, margin, window));
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
    int strip = strips.at(q);
    long pBefore = walls.pLeast;
    long pAfter = walls.pMost;
    long qBefore = walls.qLeast;
    long qAfter = walls.qMost;
    for (int i = 0; i < near.length; i += STRIDE) {
      switch (farthest(near, i, p, q, near[i + 4])) {
        case BEFORE -> pAfter = Math.min(pAfter, near[i]);
        case BEHIND -> pBefore = Math.max(pBefore, near[i + 1]);
        case BELOW -> qAfter = Math.min(qAfter, near[i + 2]);
        case ABOVE -> qBefore = Math.max(qBefore, near[i + 3]);
        default -> {
          // Height separates more than any side, so this obstacle does not constrain the step.
        }
      }
    }
    long qLo = Math.max(strips.q[strip], strips.qLo(window));
    long qHi = Math.min(strips.q[strip + 1], strips.qHi(window));
    return strips.place(
        Walls.middle(strips.pLo(window), strips.pHi(window), pBefore, pAfter),
        Walls.middle(qLo, qHi, qBefore, qAfter));
  }

  /** The side of an obstacle on which (p, q) is farthest off; none if that is at most {@code f}. */
  private static int farthest(long[] near, int i, long p, long q, long f) {
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
   * How far the vise can go straight each way from a position of this space with margin ≥ 0,
   * staying in it; with tap room it keeps that everywhere on the way.
   *
   * @param allowed positions of this space at which the bolts stand in the slots reported and the
   *     overhang is within its limit
   */
  public Play play(Place place, Rectangle allowed) {
    return Play.straight(strips, walls, near(), Math.max(0, tap), place, allowed);
  }
}
