package org.jawroom.placement.opening;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.jawroom.clearance.Obstacles;
import org.jawroom.clearance.OpeningBounds;
import org.jawroom.clearance.OpeningBounds.Facing;
import org.jawroom.clearance.SweptParts;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Orientation;
import org.jawroom.geometry.Rectangle;
import org.jawroom.placement.bolting.Region;
import org.jawroom.placement.space.FreeSpace;
import org.jawroom.placement.space.Window;

/**
 * The widest part of the opening range over which some place of a region has margin ≥ 0.
 *
 * <p>First it is asked whether even what each part covers at every opening goes anywhere; as a rule
 * it does not, and nothing more need be asked. Then, for a place fixed across the jaws' travel (q),
 * each box is clear across, clear in height, or asks that its part stay before or behind it along
 * the jaws' travel (p); see {@link OpeningLine}. Of all q that allow a range, the least is the
 * lower side of a rectangle of places, the lower wall, or the far side of a box, none of which
 * depends on the opening: so trying those q decides. At each, {@link OpeningLine} finds the widest
 * range exactly.
 */
public final class OpeningSearch {
  private OpeningSearch() {}

  /** The widest range in any region; of equally wide ones that with the least start. */
  public static OpeningRange widest(List<Region> regions, Interval full) {
    OpeningRange best = OpeningRange.EMPTY;
    Map<SweptParts, SweptParts> cores = new HashMap<>();
    for (Region region : regions) {
      SweptParts core = cores.computeIfAbsent(region.swept().over(full), SweptParts::core);
      FreeSpace most =
          FreeSpace.belowZero(region.places(), Obstacles.of(core, region.guards(), region.turn()));
      if (most.isClear(0, Window.EVERYWHERE)) {
        best = widest(region, best);
      }
    }
    return best;
  }

  private static OpeningRange widest(Region region, OpeningRange bestSoFar) {
    Orientation turn = region.turn();
    OpeningBounds bounds = OpeningBounds.of(region.swept(), region.guards(), turn);
    OpeningRange best = bestSoFar;
    for (Rectangle places : region.places().rectangles()) {
      Interval along = places.along(turn.uAxis());
      Interval p = turn.uSign() > 0 ? along : along.negated();
      Interval across = places.along(turn.uAxis().across());
      long qLo = Math.max(across.lo(), bounds.qLeast());
      long qHi = Math.min(across.hi(), bounds.qMost());
      if (qLo > qHi) {
        continue;
      }
      List<Facing> reached =
          bounds.boxes().stream().filter(box -> box.lo() < p.hi() && p.lo() < box.hi()).toList();
      TreeSet<Long> tries = new TreeSet<>(List.of(qLo));
      for (Facing box : reached) {
        if (qLo < box.d() && box.d() <= qHi) {
          tries.add(box.d());
        }
      }
      for (long q : tries) {
        List<Facing> facing = new ArrayList<>();
        for (Facing box : reached) {
          if (box.c() < q && q < box.d()) {
            facing.add(box);
          }
        }
        best = new OpeningLine(bounds.walls(), facing, p).widest(best);
      }
    }
    return best;
  }
}
