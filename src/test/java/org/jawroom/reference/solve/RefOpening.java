package org.jawroom.reference.solve;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.jawroom.reference.model.RefModel;
import org.jawroom.reference.model.RefPair;
import org.jawroom.reference.model.RefPair.Field;
import org.jawroom.reference.model.RefPart;
import org.jawroom.reference.model.RefRegion;
import org.jawroom.reference.space.Facing;
import org.jawroom.reference.space.Ratio;
import org.jawroom.reference.space.Span;

/**
 * The widest usable opening over all placements, or over the settable ones alone, exact.
 *
 * <p>Only limits along the jaws' axis depend on the opening. Across it, finitely many lines are
 * candidates (ends of the region and far edges of forbidden bands). On each line, for a position p
 * along it, each obstacle is a disjunction: stay on this side or on that. Each alternative holds
 * always, never, from some opening on ({@code s0 ≥ r}) or up to some opening ({@code s1 ≤ r}), with
 * r linear in p. The widest opening occurs at a p where the region ends, where an alternative
 * begins or ceases to hold, or where two alternatives of one kind intersect (rounded both ways,
 * since positions lie on the lattice). All of those are tried.
 */
public final class RefOpening {

  /** An opening range; wider is better, then the lower start. */
  public record Range(Ratio from, Ratio to) {
    public Ratio width() {
      return to.minus(from);
    }

    boolean betterThan(Range other) {
      if (other == null) {
        return true;
      }
      int wider = width().compareTo(other.width());
      return wider > 0 || wider == 0 && from.compareTo(other.from) < 0;
    }
  }

  private final RefModel model;
  private final boolean settable;
  private final List<RefRegion> regions;
  private final long tap;
  private final long min;
  private final long max;
  private boolean searched;
  private Range best;

  public RefOpening(RefModel model, boolean settable) {
    this(model, settable, model.regions, settable ? model.settings.tapRoom() : 0);
  }

  /** At one place, wherever within {@code off} of it along x and along y the vise stands. */
  static RefOpening at(RefModel model, RefRegion held, long x, long y, long off) {
    RefRegion there =
        new RefRegion(held.turn(), held.mount(), List.of(new Span(x, x)), List.of(new Span(y, y)));
    return new RefOpening(model, false, List.of(there), off);
  }

  private RefOpening(RefModel model, boolean settable, List<RefRegion> regions, long off) {
    this.model = model;
    this.settable = settable;
    this.regions = regions;
    this.tap = off;
    this.min = model.wholeOpening().lo();
    this.max = model.wholeOpening().hi();
  }

  /** The widest range for which some such placement has margin ≥ 0, or {@code null}. */
  public Range widest() {
    if (!searched && min < max) {
      regions.forEach(this::search);
    }
    searched = true;
    return best;
  }

  /**
   * The constraint that an edge, {@code closed} at the least opening and {@code open} at the
   * greatest, is at most {@code k + sign·p}.
   */
  private record Demand(long k, int sign, long closed, long open) {
    long limit(long p) {
      return k + sign * p;
    }

    boolean always(long p) {
      return limit(p) >= Math.max(closed, open);
    }

    boolean never(long p) {
      return limit(p) < Math.min(closed, open);
    }

    boolean onEnd() {
      return open > closed;
    }
  }

  private record Obstacle(Demand one, Demand other) {}

  private void search(RefRegion held) {
    RefRegion region = settable ? model.settable(held) : held;
    Facing facing = Facing.of(region.turn());
    List<Span> along = facing.alongX() ? region.xs() : region.ys();
    List<Span> across = facing.alongX() ? region.ys() : region.xs();
    List<Obstacle> obstacles = new ArrayList<>();
    List<Span> bands = new ArrayList<>();
    for (RefPair pair : model.pairs(region.mount())) {
      Span swept = model.u(pair.part(), model.wholeOpening());
      if (swept.isEmpty()) {
        continue;
      }
      Field field = pair.field(facing, swept);
      if (field.flat() >= 0) {
        continue;
      }
      long low = (facing.alongX() ? field.aY() : field.aX()) - tap;
      long high = (facing.alongX() ? field.bY() : field.bX()) + tap;
      if (low < high) {
        bands.add(new Span(low, high));
        obstacles.add(obstacle(pair, facing));
      }
    }
    for (BitSet active : minimalLines(across, bands)) {
      Set<Obstacle> there = new LinkedHashSet<>();
      active.stream().forEach(i -> there.add(obstacles.get(i)));
      for (Span span : along) {
        line(List.copyOf(there), span);
      }
    }
  }

  private Obstacle obstacle(RefPair pair, Facing facing) {
    RefPart part = pair.part();
    Span guard = facing.alongX() ? pair.block().x() : pair.block().y();
    boolean forward = facing.sign() > 0;
    // The part's high edge in the table frame, and its low edge negated.
    long highClosed = forward ? part.hiClosed() : -part.loClosed();
    long highOpen = forward ? part.hiOpen() : -part.loOpen();
    long lowClosed = forward ? -part.loClosed() : part.hiClosed();
    long lowOpen = forward ? -part.loOpen() : part.hiOpen();
    return new Obstacle(
        new Demand(guard.lo() - pair.need() - tap, -1, highClosed, highOpen),
        new Demand(-guard.hi() - pair.need() - tap, 1, lowClosed, lowOpen));
  }

  /**
   * The obstacles on each candidate line, without lines whose obstacles are a superset of
   * another's.
   */
  private static List<BitSet> minimalLines(List<Span> across, List<Span> bands) {
    Set<BitSet> found = new LinkedHashSet<>();
    for (Span span : across) {
      TreeSet<Long> lines = new TreeSet<>(List.of(span.lo()));
      bands.stream()
          .map(Span::hi)
          .filter(hi -> span.lo() < hi && hi <= span.hi())
          .forEach(lines::add);
      for (long line : lines) {
        BitSet active = new BitSet();
        for (int i = 0; i < bands.size(); i++) {
          if (bands.get(i).lo() < line && line < bands.get(i).hi()) {
            active.set(i);
          }
        }
        found.add(active);
      }
    }
    List<BitSet> minimal = new ArrayList<>();
    for (BitSet one : found) {
      boolean needless = false;
      for (BitSet other : found) {
        BitSet left = (BitSet) other.clone();
        left.andNot(one);
        needless |= other != one && left.isEmpty();
      }
      if (!needless) {
        minimal.add(one);
      }
    }
    return minimal;
  }

  private void line(List<Obstacle> obstacles, Span span) {
    TreeSet<Long> places = new TreeSet<>(List.of(span.lo(), span.hi()));
    List<Demand> running = new ArrayList<>();
    for (Obstacle obstacle : obstacles) {
      for (Demand demand : List.of(obstacle.one, obstacle.other)) {
        long first = demand.sign * (demand.closed - demand.k);
        long second = demand.sign * (demand.open - demand.k);
        addWithin(places, first, span);
        addWithin(places, second, span);
        if (first != second
            && Math.min(first, second) <= span.hi()
            && span.lo() <= Math.max(first, second)) {
          running.add(demand);
        }
      }
    }
    for (Demand a : running) {
      for (Demand b : running) {
        if (a.onEnd() == b.onEnd()) {
          crossing(a, b, places, span);
        }
      }
    }
    for (long p : places) {
      if (mayBeat(obstacles, p)) {
        at(obstacles, p);
      }
    }
  }

  private static void addWithin(Set<Long> places, long p, Span span) {
    if (span.lo() <= p && p <= span.hi()) {
      places.add(p);
    }
  }

  /** The p at which (k − closed + sign·p) / (open − closed) is equal for both. */
  private static void crossing(Demand a, Demand b, Set<Long> places, Span span) {
    BigInteger runA = BigInteger.valueOf(a.open - a.closed);
    BigInteger runB = BigInteger.valueOf(b.open - b.closed);
    BigInteger slope =
        runB.multiply(BigInteger.valueOf(a.sign))
            .subtract(runA.multiply(BigInteger.valueOf(b.sign)));
    if (slope.signum() != 0) {
      BigInteger level =
          BigInteger.valueOf(b.k - b.closed)
              .multiply(runA)
              .subtract(BigInteger.valueOf(a.k - a.closed).multiply(runB));
      Ratio p = Ratio.of(level, slope);
      if (p.compareTo(Ratio.of(span.lo())) >= 0 && p.compareTo(Ratio.of(span.hi())) <= 0) {
        addWithin(places, p.floor(), span);
        addWithin(places, p.ceil(), span);
      }
    }
  }

  /**
   * The opening at which a constraint that is neither always nor never met begins or ceases to
   * hold.
   */
  private Ratio turningPoint(Demand demand, long p) {
    return Ratio.of(
        BigInteger.valueOf(min)
            .multiply(BigInteger.valueOf(demand.open - demand.closed))
            .add(
                BigInteger.valueOf(max - min)
                    .multiply(BigInteger.valueOf(demand.limit(p) - demand.closed))),
        BigInteger.valueOf(demand.open - demand.closed));
  }

  private void at(List<Obstacle> obstacles, long p) {
    Set<Ratio> starts = new TreeSet<>(Set.of(Ratio.of(min)));
    for (Obstacle obstacle : obstacles) {
      for (Demand demand : List.of(obstacle.one, obstacle.other)) {
        if (!demand.always(p) && !demand.never(p) && !demand.onEnd()) {
          starts.add(turningPoint(demand, p));
        }
      }
    }
    for (Ratio from : starts) {
      Ratio to = Ratio.of(max);
      for (Obstacle obstacle : obstacles) {
        Ratio one = longest(obstacle.one, p, from);
        Ratio other = longest(obstacle.other, p, from);
        Ratio longer = one.compareTo(other) >= 0 ? one : other;
        to = longer.compareTo(to) < 0 ? longer : to;
      }
      if (from.compareTo(to) <= 0) {
        Range range = new Range(from, to);
        if (range.betterThan(best)) {
          best = range;
        }
      }
    }
  }

  /**
   * The greatest end of a range from {@code from} on that satisfies the constraint; −1 if none
   * does.
   */
  private Ratio longest(Demand demand, long p, Ratio from) {
    if (demand.always(p)) {
      return Ratio.of(max);
    }
    if (demand.never(p)) {
      return Ratio.of(-1);
    }
    Ratio turning = turningPoint(demand, p);
    if (demand.onEnd()) {
      return turning;
    }
    return Ratio.of(from.compareTo(turning) >= 0 ? max : -1);
  }

  /** False only if integer bounds already show that no range at p beats the incumbent. */
  private boolean mayBeat(List<Obstacle> obstacles, long p) {
    if (best == null) {
      return true;
    }
    long width = best.width().floor();
    // Starts rounded down and ends rounded up: an upper bound.
    TreeSet<Long> starts = new TreeSet<>(Set.of(min));
    int n = obstacles.size();
    long[][] turning = new long[2][n];
    int[][] kind = new int[2][n];
    for (int i = 0; i < n; i++) {
      for (int which = 0; which < 2; which++) {
        Demand demand = which == 0 ? obstacles.get(i).one : obstacles.get(i).other;
        if (demand.always(p) || demand.never(p)) {
          kind[which][i] = demand.always(p) ? 1 : 0;
          continue;
        }
        long run = demand.open - demand.closed;
        long beyond = demand.limit(p) - demand.closed;
        if (Math.abs(beyond) > Long.MAX_VALUE / (max - min)) {
          // The bound overflows a long, so the exact computation decides.
          return true;
        }
        long part = (max - min) * beyond;
        long down = min + Math.floorDiv(part, run);
        kind[which][i] = demand.onEnd() ? 3 : 2;
        turning[which][i] = demand.onEnd() ? down + 1 : down;
        if (!demand.onEnd()) {
          starts.add(down);
        }
      }
    }
    for (long from : starts) {
      long to = max;
      for (int i = 0; i < n && to - from >= width; i++) {
        long longer = -1;
        for (int which = 0; which < 2; which++) {
          long end =
              switch (kind[which][i]) {
                case 0 -> -1;
                case 1 -> max;
                case 2 -> from >= turning[which][i] ? max : -1;
                default -> turning[which][i];
              };
          longer = Math.max(longer, end);
        }
        to = Math.min(to, longer);
      }
      if (to - from >= width) {
        return true;
      }
    }
    return false;
  }
}
