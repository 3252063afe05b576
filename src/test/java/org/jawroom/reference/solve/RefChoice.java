package org.jawroom.reference.solve;

import java.util.Comparator;
import java.util.List;
import org.jawroom.reference.model.RefArea;
import org.jawroom.reference.model.RefMargin;
import org.jawroom.reference.model.RefModel;
import org.jawroom.reference.model.RefRegion;
import org.jawroom.reference.space.Rect;
import org.jawroom.reference.space.Span;

/** The best margin over all regions, and the recommended placement, for one opening range. */
public final class RefChoice {
  private final RefModel model;
  private final Span openings;
  private final RefReach reach;
  private final List<RefArea> areas;

  public RefChoice(RefModel model, Span openings) {
    this.model = model;
    this.openings = openings;
    this.reach = new RefReach(model);
    this.areas =
        model.regions.stream()
            .map(region -> new RefArea(region, List.of(), model.deciding(region, openings)))
            .toList();
  }

  /** A placement. */
  public record Spot(RefRegion region, long x, long y) {}

  /** The largest margin anywhere; {@link RefMargin#NO_LIMIT} if nothing can be hit. */
  public long bestMargin() {
    return bestMargin(areas);
  }

  private static long bestMargin(List<RefArea> areas) {
    long best = Long.MIN_VALUE;
    for (RefArea area : areas) {
      boolean beaten =
          best == RefMargin.NO_LIMIT || best > RefMargin.ENDLESS_LOSS && area.isEmpty(best + 1);
      if (!beaten) {
        best = Math.max(best, RefMargin.largest(area));
      }
    }
    return best;
  }

  private static List<RefArea> clear(List<RefArea> areas) {
    return areas.stream().filter(area -> !area.isEmpty(0)).toList();
  }

  /** Whether some placement has a margin of 0 or more. */
  public boolean somewhereClear() {
    return !clear(areas).isEmpty();
  }

  /** Whether some placement at which the vise can be tapped square has a margin of 0 or more. */
  public boolean somewhereSettable() {
    return !clear(areas.stream().map(this::settable).toList()).isEmpty();
  }

  /** The least protrusion of the work area from the reach among positions with margin ≥ 0. */
  long leastShortfallOfClear() {
    return leastShortfall(areas, 0);
  }

  /** The recommended placement. */
  public Spot recommended() {
    if (!somewhereClear()) {
      long margin = bestMargin();
      return nearest(withinShortfall(areas, leastShortfall(areas, margin)), margin);
    }
    return recommendedOf(clear(areas));
  }

  /** The recommended placement if reaching the work area comes before everything but clearance. */
  public Spot recommendedInReach() {
    return somewhereClear()
        ? recommendedOf(clear(withinShortfall(areas, leastShortfallOfClear())))
        : recommended();
  }

  private Spot recommendedOf(List<RefArea> clear) {
    List<RefArea> left = preferred(clear, clear.stream().filter(RefChoice::isBolted).toList());
    left = preferred(left, clear(left.stream().map(this::settable).toList()));
    left = clear(withinShortfall(left, leastShortfall(left, 0)));
    return nearest(left, bestMargin(left));
  }

  private static List<RefArea> preferred(List<RefArea> all, List<RefArea> better) {
    return better.isEmpty() ? all : better;
  }

  private static boolean isBolted(RefArea area) {
    return !area.region().mount().clamps();
  }

  /** The positions of {@code area} at which the vise can be tapped square. */
  private RefArea settable(RefArea area) {
    RefRegion region = area.region();
    return new RefArea(model.settable(region), model.untappable(region, openings), area.fields());
  }

  /** Whether the vise can be tapped square there. */
  boolean isSettable(Spot spot) {
    Span x = new Span(spot.x, spot.x);
    Span y = new Span(spot.y, spot.y);
    RefRegion settable = model.settable(spot.region).within(x, y);
    return !settable.isEmpty()
        && model.untappable(spot.region, openings).stream()
            .noneMatch(rect -> rect.holdsInside(spot.x, spot.y));
  }

  private long leastShortfall(List<RefArea> areas, long t) {
    long least = Long.MAX_VALUE;
    for (RefArea area : areas) {
      for (Rect cell : area.cells(t)) {
        least = Math.min(least, reach.least(area.region().turn(), cell));
      }
    }
    return least;
  }

  private List<RefArea> withinShortfall(List<RefArea> areas, long most) {
    return areas.stream()
        .map(area -> area.in(reach.within(area.region(), most)))
        .filter(area -> !area.region().isEmpty())
        .toList();
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

  private Spot nearest(List<RefArea> areas, long margin) {
    Ranked best = null;
    for (RefArea area : areas) {
      RefRegion region = area.region();
      Span[] work = model.workArea(region.turn());
      long idealX = model.machine.spindleX() - middle(work[0]);
      long idealY = model.machine.spindleY() - middle(work[1]);
      for (Rect cell : area.cells(margin)) {
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
