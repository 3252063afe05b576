package org.jawroom.placement;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.jawroom.clearance.Pair;
import org.jawroom.geometry.Fraction;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Length;
import org.jawroom.geometry.Stretch;
import org.jawroom.geometry.Turn;

/**
 * The opening ranges possible along one line: the vise moves along its own u by p, everything
 * across is fixed.
 *
 * <p>With the opening told as a share σ of the full range, a part's u limits are linear in σ, so
 * each pair asks one of two things of p and of every σ of the range (margin ≥ 0, touching counts):
 *
 * <ul>
 *   <li>part before guard: Δ·σ ≤ c − p, Δ and c from the part's high limit and the guard's near
 *       face;
 *   <li>part behind guard: Δ·σ ≥ c − p, from the low limit and the far face.
 * </ul>
 *
 * <p>For a fixed p each is a lower or an upper bound on σ, or a plain yes or no; so the widest
 * range that starts at a given σ is read off at once, and the start is 0 or one of the lower
 * bounds. As p varies, for each choice of sides the possible (p, start, end) form a convex
 * polytope, so between its vertices width and start are linear in p: the widest range, and the one
 * of these with the least start, stands at a vertex, where p is at an end or at a plain bound, or
 * two lower bounds (or a lower one and 0) meet, or two upper ones (or an upper one and 1) do.
 * Places are whole half-nanometres, so the whole p to either side of each such meeting are tried,
 * and that decides; O(n²) of them, O(n²) each.
 */
final class OpeningLine {

  /** {@code before}: Δ·σ ≤ c − p; else Δ·σ ≥ c − p. */
  private record Bound(long c, long delta, boolean before) {

    /** Whether it bounds σ from below rather than above; not asked of a plain bound on p. */
    boolean isLower() {
      return before == (delta < 0);
    }

    boolean isPlain() {
      return delta == 0;
    }

    boolean allows(long p) {
      return before ? p <= c : p >= c;
    }

    /** The σ it bounds at {@code p}: (c − p)/Δ. */
    Fraction at(long p) {
      return Fraction.of(c - p, delta);
    }
  }

  /** The bounds of a pair, one for each side on which its part may stand. */
  private record Facing(List<Bound> sides) {}

  private final Set<Facing> pairs;
  private final Interval p;

  private OpeningLine(Set<Facing> pairs, Interval p) {
    this.pairs = pairs;
    this.p = p;
  }

  /**
   * @param facing the pairs that neither height nor the place across keeps clear
   * @param p the places along +u
   */
  static OpeningLine of(List<Pair> facing, Turn turn, Interval p) {
    Set<Facing> pairs = new LinkedHashSet<>();
    for (Pair pair : facing) {
      Interval along = pair.guard().box().along(turn.uAxis());
      Interval guard = turn.uSign() > 0 ? along : along.negated();
      long need = pair.required() + pair.tolerance();
      Stretch u = pair.part().u();
      List<Bound> sides = new ArrayList<>();
      if (Length.isBounded(guard.lo())) {
        sides.add(
            new Bound(guard.lo() - need - u.closed().hi(), u.open().hi() - u.closed().hi(), true));
      }
      if (Length.isBounded(guard.hi())) {
        sides.add(
            new Bound(guard.hi() + need - u.closed().lo(), u.open().lo() - u.closed().lo(), false));
      }
      pairs.add(new Facing(List.copyOf(sides)));
    }
    return new OpeningLine(pairs, p);
  }

  /** The widest range here if it is better than {@code best}, else {@code best}. */
  OpeningRange widest(OpeningRange best) {
    if (pairs.stream().anyMatch(pair -> pair.sides().isEmpty())) {
      return best;
    }
    OpeningRange widest = best;
    for (long at : tries()) {
      OpeningRange range = widestAt(at);
      if (range.betterThan(widest)) {
        widest = range;
      }
    }
    return widest;
  }

  /** The p at which, or beside which, a vertex can stand. */
  private TreeSet<Long> tries() {
    List<Bound> bounds = pairs.stream().flatMap(pair -> pair.sides().stream()).distinct().toList();
    TreeSet<Long> tries = new TreeSet<>(List.of(p.lo(), p.hi()));
    for (int i = 0; i < bounds.size(); i++) {
      Bound one = bounds.get(i);
      if (one.isPlain()) {
        tries.add(one.c());
        continue;
      }
      tries.add(one.isLower() ? one.c() : one.c() - one.delta());
      for (Bound other : bounds.subList(0, i)) {
        if (!other.isPlain() && one.isLower() == other.isLower() && one.delta() != other.delta()) {
          Fraction meeting = meeting(one, other);
          if (meeting.compareTo(Fraction.whole(p.lo())) > 0
              && meeting.compareTo(Fraction.whole(p.hi())) < 0) {
            tries.add(meeting.floor());
            tries.add(meeting.ceil());
          }
        }
      }
    }
    tries.removeIf(at -> !p.contains(at));
    return tries;
  }

  /** Where (c₁ − p)/Δ₁ = (c₂ − p)/Δ₂. */
  private static Fraction meeting(Bound one, Bound other) {
    return Fraction.whole(one.c())
        .times(other.delta())
        .minus(Fraction.whole(other.c()).times(one.delta()))
        .dividedBy(other.delta() - one.delta());
  }

  /** The widest range at {@code at}; of equally wide ones that with the least start. */
  private OpeningRange widestAt(long at) {
    TreeSet<Fraction> starts = new TreeSet<>();
    starts.add(Fraction.ZERO);
    for (Facing pair : pairs) {
      for (Bound bound : pair.sides()) {
        if (!bound.isPlain() && bound.isLower()) {
          Fraction start = bound.at(at);
          if (start.compareTo(Fraction.ZERO) > 0 && start.compareTo(Fraction.ONE) <= 0) {
            starts.add(start);
          }
        }
      }
    }
    OpeningRange widest = OpeningRange.EMPTY;
    for (Fraction start : starts) {
      OpeningRange range = new OpeningRange(start, endFrom(start, at));
      if (range.betterThan(widest)) {
        widest = range;
      }
    }
    return widest;
  }

  /** The greatest end of a range that starts at {@code start}; below it if there is none. */
  private Fraction endFrom(Fraction start, long at) {
    Fraction end = Fraction.ONE;
    for (Facing pair : pairs) {
      Fraction most = null;
      for (Bound bound : pair.sides()) {
        Fraction its = endFrom(start, at, bound);
        if (its != null) {
          most = most == null ? its : Fraction.max(most, its);
        }
      }
      if (most == null) {
        return start.minus(Fraction.ONE);
      }
      end = Fraction.min(end, most);
    }
    return end;
  }

  /**
   * How far σ may go under {@code bound} from {@code start}; null if not even {@code start} is
   * allowed.
   */
  private static Fraction endFrom(Fraction start, long at, Bound bound) {
    if (bound.isPlain()) {
      return bound.allows(at) ? Fraction.ONE : null;
    }
    Fraction limit = bound.at(at);
    if (bound.isLower()) {
      return limit.compareTo(start) <= 0 ? Fraction.ONE : null;
    }
    return start.compareTo(limit) <= 0 ? limit : null;
  }
}
