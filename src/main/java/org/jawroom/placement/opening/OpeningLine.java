package org.jawroom.placement.opening;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import java.util.TreeSet;
import org.jawroom.clearance.obstacle.OpeningBounds.Bound;
import org.jawroom.clearance.obstacle.OpeningBounds.Facing;
import org.jawroom.geometry.Fraction;
import org.jawroom.geometry.Interval;

/**
 * The opening ranges that are feasible along one line: the vise moves along its own u by p,
 * everything across is fixed. Each wall is one constraint on p and σ; each box is a disjunction of
 * two.
 *
 * <p>For fixed p each constraint is a lower bound on σ, an upper bound on σ, or a condition on p
 * alone. The widest range with a given start follows at once, and the start is 0 or one of the
 * lower bounds. As p varies, for each choice of sides the feasible (p, start, end) form a convex
 * polytope. Width and start are linear between its vertices, so the widest range, and among these
 * the one with the least start, occurs at a vertex: p at an end or at a plain bound, two lower
 * bounds (or a lower bound and 0) intersecting, or two upper bounds (or an upper bound and 1).
 * Positions are whole half-nanometres, so trying the whole p on either side of each intersection
 * decides exactly. There are O(n²) of them at O(n²) each.
 */
final class OpeningLine {
  private final List<Bound> walls;
  private final List<Facing> boxes;
  private final List<Bound> lower = new ArrayList<>();
  private final List<Bound> upper = new ArrayList<>();
  private final TreeSet<Long> tries = new TreeSet<>();
  private long pLo;
  private long pHi;

  /**
   * @param walls the constraints that hold everywhere
   * @param boxes the boxes in the line's way
   * @param p the closed interval of positions along +u
   */
  OpeningLine(List<Bound> walls, List<Facing> boxes, Interval p) {
    this.walls = walls;
    this.boxes = boxes;
    this.pLo = p.lo();
    this.pHi = p.hi();
    for (Bound wall : walls) {
      if (wall.isPlain()) {
        pLo = wall.before() ? pLo : Math.max(pLo, wall.c());
        pHi = wall.before() ? Math.min(pHi, wall.c()) : pHi;
      }
    }
  }

  /** The widest range on this line if it is better than {@code best}, else {@code best}. */
  OpeningRange widest(OpeningRange best) {
    for (Facing box : boxes) {
      if (box.sides().isEmpty()) {
        return best;
      }
    }
    if (pLo > pHi) {
      return best;
    }
    findTries();
    OpeningRange widest = best;
    for (long at : tries) {
      OpeningRange range = widestAt(at);
      if (range.betterThan(widest)) {
        widest = range;
      }
    }
    return widest;
  }

  /** Collects the p at which, or next to which, a vertex can lie. */
  private void findTries() {
    tries.add(pLo);
    tries.add(pHi);
    walls.forEach(this::sort);
    boxes.forEach(box -> box.sides().forEach(this::sort));
    for (List<Bound> alike : List.of(lower, upper)) {
      for (int i = 0; i < alike.size(); i++) {
        for (int j = 0; j < i; j++) {
          if (alike.get(i).delta() != alike.get(j).delta()) {
            tryMeeting(alike.get(i), alike.get(j));
          }
        }
      }
    }
  }

  private void sort(Bound bound) {
    if (bound.isPlain()) {
      tryAt(bound.c());
      return;
    }
    tryAt(bound.isLower() ? bound.c() : bound.c() - bound.delta());
    List<Bound> alike = bound.isLower() ? lower : upper;
    if (!alike.contains(bound)) {
      alike.add(bound);
    }
  }

  private void tryAt(long p) {
    if (pLo <= p && p <= pHi) {
      tries.add(p);
    }
  }

  /** Adds the whole p on either side of the intersection of two bounds. */
  private void tryMeeting(Bound one, Bound other) {
    OptionalLong floor = Meeting.floor(one, other);
    if (floor.isPresent()) {
      tryAt(floor.getAsLong());
      tryAt(floor.getAsLong() + 1);
    }
  }

  /** The widest range at {@code at}; ties go to the least start. */
  private OpeningRange widestAt(long at) {
    OpeningRange widest = OpeningRange.EMPTY;
    Fraction end = endFrom(Fraction.ZERO, at);
    if (end != null) {
      widest = new OpeningRange(Fraction.ZERO, end);
    }
    for (Bound bound : lower) {
      Fraction start = Fraction.of(bound.c() - at, bound.delta());
      if (start.numerator() > 0 && start.numerator() <= start.denominator()) {
        end = endFrom(start, at);
        if (end != null) {
          OpeningRange range = new OpeningRange(start, end);
          widest = range.betterThan(widest) ? range : widest;
        }
      }
    }
    return widest;
  }

  /** The greatest end of a range that starts at {@code start}; null if there is none. */
  private Fraction endFrom(Fraction start, long at) {
    Fraction end = Fraction.ONE;
    for (Bound wall : walls) {
      Fraction its = endFrom(start, at, wall);
      if (its == null) {
        return null;
      }
      end = Fraction.min(end, its);
    }
    for (Facing box : boxes) {
      Fraction most = null;
      for (Bound bound : box.sides()) {
        Fraction its = endFrom(start, at, bound);
        if (its != null) {
          most = most == null ? its : Fraction.max(most, its);
        }
      }
      if (most == null) {
        return null;
      }
      end = Fraction.min(end, most);
    }
    return end;
  }

  /**
   * The greatest σ that {@code bound} allows from {@code start} on; null if it excludes {@code
   * start}.
   */
  private static Fraction endFrom(Fraction start, long at, Bound bound) {
    if (bound.isPlain()) {
      return bound.allows(at) ? Fraction.ONE : null;
    }
    Fraction limit = Fraction.of(bound.c() - at, bound.delta());
    if (bound.isLower()) {
      return limit.compareTo(start) <= 0 ? Fraction.ONE : null;
    }
    return start.compareTo(limit) <= 0 ? limit : null;
  }
}
