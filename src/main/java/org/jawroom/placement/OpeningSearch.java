package org.jawroom.placement;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.jawroom.clearance.Obstacles;
import org.jawroom.clearance.Pair;
import org.jawroom.clearance.PairBounds;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Rectangle;
import org.jawroom.geometry.Turn;

/**
 * The widest part of the opening range over which some place of a region has margin ≥ 0.
 *
 * <p>For a place fixed across the jaws' travel (q), each pair is clear across, clear in height, or
 * asks that its part stay before or behind its guard along the jaws' travel (p); see {@link
 * OpeningLine}. Of all q that allow a range, the least is the lower side of a rectangle of places
 * or the far side of a pair's obstacle, neither of which depends on the opening: so trying those q
 * decides. At each, {@link OpeningLine} finds the widest range exactly.
 */
final class OpeningSearch {
  private OpeningSearch() {}

  /** The widest range in any region; of equally wide ones that with the least start. */
  static OpeningRange widest(List<Region> regions, Interval full) {
    OpeningRange best = OpeningRange.EMPTY;
    for (Region region : regions) {
      FreeSpace least =
          new FreeSpace(
              region.places(),
              Obstacles.of(region.swept().over(full).core(), region.guards(), region.turn()));
      if (least.isClear(0, Window.EVERYWHERE)) {
        best = widest(region, full, best);
      }
    }
    return best;
  }

  private static OpeningRange widest(Region region, Interval full, OpeningRange bestSoFar) {
    Turn turn = region.turn();
    Axis across = turn.uAxis().across();
    List<PairBounds> bounds = region.field(full).bounds();
    List<Pair> pairs = region.pairs();
    OpeningRange best = bestSoFar;
    for (Rectangle places : region.places()) {
      Interval q = places.along(across);
      Interval p = places.along(turn.uAxis());
      TreeSet<Long> tries = new TreeSet<>(List.of(q.lo()));
      for (PairBounds pair : bounds) {
        long farSide = across == Axis.X ? pair.b() : pair.d();
        if (pair.f() < 0 && q.contains(farSide)) {
          tries.add(farSide);
        }
      }
      for (long at : tries) {
        List<Pair> facing = new ArrayList<>();
        for (int i = 0; i < bounds.size(); i++) {
          if (faces(bounds.get(i), across, at)) {
            facing.add(pairs.get(i));
          }
        }
        OpeningLine line = OpeningLine.of(facing, turn, turn.uSign() > 0 ? p : p.negated());
        best = line.widest(best);
      }
    }
    return best;
  }

  /** Whether neither height nor the place across keeps the two of a pair clear. */
  private static boolean faces(PairBounds pair, Axis across, long at) {
    long nearSide = across == Axis.X ? pair.a() : pair.c();
    long farSide = across == Axis.X ? pair.b() : pair.d();
    return pair.f() < 0 && nearSide < at && at < farSide;
  }
}
