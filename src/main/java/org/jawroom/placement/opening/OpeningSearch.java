package org.jawroom.placement.opening;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.jawroom.clearance.obstacle.Obstacles;
import org.jawroom.clearance.obstacle.OpeningBounds;
import org.jawroom.clearance.obstacle.OpeningBounds.Facing;
import org.jawroom.clearance.obstacle.SweptParts;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Orientation;
import org.jawroom.geometry.Rectangle;
import org.jawroom.placement.bolting.PreparedMachine;
import org.jawroom.placement.bolting.Region;
import org.jawroom.placement.space.FreeSpace;
import org.jawroom.placement.space.Strips;
import org.jawroom.placement.space.Window;

/**
 * Finds the widest part of the opening range over which some position of a region has margin ≥ 0.
 *
 * <p>A cheap necessary condition comes first: what each part covers at every opening must fit
 * somewhere. It usually fails, which settles the question. Otherwise, for a position q fixed across
 * the jaws' travel, each box is clear across, clear in height, or constrains its part to stay
 * before or behind it along the jaws' travel (p); see {@link OpeningLine}. The least q that allows
 * a given range is the lower side of a rectangle of positions, the lower wall, or the far side of a
 * box. None of these depends on the opening, so trying them is exact.
 */
public final class OpeningSearch {
  private OpeningSearch() {}

  /** The regions that some range may have a clear position in; the others have none in any. */
  public static List<Region> hopeful(List<Region> regions, Interval full) {
    List<Region> hopeful = new ArrayList<>();
    for (Region each : regions) {
      Region region = withoutPartlyEmpty(each);
      if (FreeSpace.belowZero(region.places(), core(region, full)).isClear(0, Window.EVERYWHERE)) {
        hopeful.add(region);
      }
    }
    return hopeful;
  }

  /** The widest range for which some position is clear; ties go to the least start. */
  public static OpeningRange widest(List<Region> regions, Interval full) {
    OpeningRange best = OpeningRange.EMPTY;
    for (Region region : hopeful(regions, full)) {
      best = widest(region, region.places(), 0, best);
    }
    return best;
  }

  /**
   * The widest range for which some settable position is clear; ties likewise.
   *
   * @param hopeful see {@link #hopeful}
   */
  public static OpeningRange widestSettable(
      List<Region> hopeful, PreparedMachine machine, Interval full) {
    long tap = machine.settings().tapRoom();
    OpeningRange best = OpeningRange.EMPTY;
    for (Region region : hopeful) {
      Optional<Strips> places = region.settable(machine);
      if (places.isPresent()
          && FreeSpace.of(region.places(), core(region, full))
              .tapped(places.get(), tap)
              .isClear(0, Window.EVERYWHERE)) {
        best = widest(region, places.get(), tap, best);
      }
    }
    return best;
  }

  /**
   * Parts that are empty over some openings at best are left out over all: a range may look wider
   * so, which makes a pairing unknown rather than hopeless.
   */
  private static Region withoutPartlyEmpty(Region region) {
    SweptParts parts = region.swept().neverEmpty();
    return parts == region.swept() ? region : region.with(parts);
  }

  private static Obstacles core(Region region, Interval full) {
    return Obstacles.of(region.swept().over(full).core(), region.guards(), region.turn());
  }

  private static OpeningRange widest(Region region, Strips held, long tap, OpeningRange bestSoFar) {
    Orientation turn = region.turn();
    OpeningBounds bounds = OpeningBounds.of(region.swept(), region.guards(), turn, tap);
    OpeningRange best = bestSoFar;
    for (Rectangle places : held.rectangles()) {
      Interval along = places.along(turn.uAxis());
      Interval p = turn.uSign() > 0 ? along : along.negated();
      Interval across = places.along(turn.uAxis().across());
      long qLo = Math.max(across.lo(), bounds.qLeast());
      long qHi = Math.min(across.hi(), bounds.qMost());
      if (qLo > qHi) {
        continue;
      }
      List<Facing> reached = new ArrayList<>(bounds.boxes().size());
      for (Facing box : bounds.boxes()) {
        if (box.lo() < p.hi() && p.lo() < box.hi()) {
          reached.add(box);
        }
      }
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
