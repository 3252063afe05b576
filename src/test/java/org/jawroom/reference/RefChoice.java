package org.jawroom.reference;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalLong;
import org.jawroom.reference.RefPair.Field;

/** The best margin over all regions, and the recommended placement, for one opening range. */
final class RefChoice {
  private final RefModel model;
  private final Span openings;
  private OptionalLong bestMargin = OptionalLong.empty();

  RefChoice(RefModel model, Span openings) {
    this.model = model;
    this.openings = openings;
  }

  /** A placement. */
  record Spot(RefRegion region, long x, long y) {}

  /** The largest margin anywhere; {@link RefMargin#NO_LIMIT} if nothing can be hit. */
  long bestMargin() {
    if (bestMargin.isEmpty()) {
      bestMargin = OptionalLong.of(bestMargin(model.regions));
    }
    return bestMargin.getAsLong();
  }

  private long bestMargin(List<RefRegion> regions) {
    long best = Long.MIN_VALUE;
    for (RefRegion region : regions) {
      List<Field> fields = model.deciding(region, openings);
      if (best > Long.MIN_VALUE
          && best < RefMargin.NO_LIMIT
          && RefMargin.isEmpty(region, fields, best + 1)) {
        continue;
      }
      best = Math.max(best, RefMargin.largest(region, fields));
    }
    return best;
  }

  /** Whether some placement has a margin of 0 or more. */
  boolean somewhereClear() {
    return model.regions.stream()
        .anyMatch(region -> !RefMargin.isEmpty(region, model.deciding(region, openings), 0));
  }

  /** The least protrusion of the work area from the reach among positions with margin ≥ 0. */
  long leastShortfallOfClear() {
    return leastShortfall(model.regions, 0);
  }

  /** The recommended placement. */
  Spot recommended() {
    long margin = bestMargin();
    List<RefRegion> regions = model.regions;
    if (margin >= 0) {
      long shortfall = leastShortfall(regions, 0);
      regions = withinShortfall(regions, shortfall);
      margin = bestMargin(regions);
    } else {
      long shortfall = leastShortfall(regions, margin);
      regions = withinShortfall(regions, shortfall);
    }
    return nearest(regions, margin);
  }

  private List<Rect> cells(RefRegion region, long t) {
    return FreeCells.of(region.xs(), region.ys(), model.forbidden(region, openings, t));
  }

  /** Protrusion of the work area on one axis with the vise at {@code at}. */
  private static long out(long at, Span work, Span reach) {
    return Math.max(0, Math.max(reach.lo() - work.lo() - at, at + work.hi() - reach.hi()));
  }

  /**
   * The position in {@code free} with the least protrusion of the work area, centred if possible.
   */
  private static long leastOut(Span free, Span work, Span reach) {
    long low = reach.lo() - work.lo();
    long high = reach.hi() - work.hi();
    long a = out(free.clamp(low), work, reach);
    long b = out(free.clamp(high), work, reach);
    // Too wide for the reach: the least protrusion is at the centre, on the lattice on either side
    // of it.
    long middle = Math.floorDiv(low + high, 2);
    long c = out(free.clamp(middle), work, reach);
    long d = out(free.clamp(middle + 1), work, reach);
    return Math.min(Math.min(a, b), Math.min(c, d));
  }

  private Span reachX() {
    long half = model.machine.travelX() / 2;
    return new Span(model.machine.spindleX() - half, model.machine.spindleX() + half);
  }

  private Span reachY() {
    long half = model.machine.travelY() / 2;
    return new Span(model.machine.spindleY() - half, model.machine.spindleY() + half);
  }

  long shortfall(Spot spot) {
    Span[] work = model.workArea(spot.region.turn());
    return Math.max(out(spot.x, work[0], reachX()), out(spot.y, work[1], reachY()));
  }

  private long leastShortfall(List<RefRegion> regions, long t) {
    long least = Long.MAX_VALUE;
    for (RefRegion region : regions) {
      Span[] work = model.workArea(region.turn());
      for (Rect cell : cells(region, t)) {
        long x = leastOut(new Span(cell.xLo(), cell.xHi()), work[0], reachX());
        long y = leastOut(new Span(cell.yLo(), cell.yHi()), work[1], reachY());
        least = Math.min(least, Math.max(x, y));
      }
    }
    return least;
  }

  private List<RefRegion> withinShortfall(List<RefRegion> regions, long most) {
    List<RefRegion> left = new ArrayList<>();
    for (RefRegion region : regions) {
      Span[] work = model.workArea(region.turn());
      long lowX = reachX().lo() - work[0].lo() - most;
      long highX = reachX().hi() - work[0].hi() + most;
      long lowY = reachY().lo() - work[1].lo() - most;
      long highY = reachY().hi() - work[1].hi() + most;
      if (lowX <= highX && lowY <= highY) {
        RefRegion cut = region.within(new Span(lowX, highX), new Span(lowY, highY));
        if (!cut.isEmpty()) {
          left.add(cut);
        }
      }
    }
    return left;
  }

  /** A candidate with its tie-break values; regions come in the order of the last two. */
  private record Ranked(Spot spot, long dx, long dy) {
    static final Comparator<Ranked> ORDER =
        Comparator.comparingLong((Ranked r) -> Math.max(r.dx, r.dy))
            .thenComparingLong(Ranked::dy)
            .thenComparingLong(Ranked::dx)
            .thenComparing(Comparator.comparingLong((Ranked r) -> r.spot.y).reversed())
            .thenComparing(Comparator.comparingLong((Ranked r) -> r.spot.x).reversed());
  }

  private Spot nearest(List<RefRegion> regions, long margin) {
    Ranked best = null;
    for (RefRegion region : regions) {
      Span[] work = model.workArea(region.turn());
      long idealX = model.machine.spindleX() - middle(work[0]);
      long idealY = model.machine.spindleY() - middle(work[1]);
      for (Rect cell : cells(region, margin)) {
        long x = new Span(cell.xLo(), cell.xHi()).clamp(idealX);
        long y = new Span(cell.yLo(), cell.yHi()).clamp(idealY);
        Ranked ranked =
            new Ranked(new Spot(region, x, y), Math.abs(x - idealX), Math.abs(y - idealY));
        if (best == null || Ranked.ORDER.compare(ranked, best) < 0) {
          best = ranked;
        }
      }
    }
    return best.spot;
  }

  private static long middle(Span span) {
    return (span.lo() + span.hi()) / 2;
  }
}
