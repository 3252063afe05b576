package org.jawroom.placement.pairing;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.jawroom.clearance.Obstacles;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Length;
import org.jawroom.placement.bolting.PreparedMachine;
import org.jawroom.placement.bolting.PreparedVise;
import org.jawroom.placement.bolting.Region;
import org.jawroom.placement.opening.OpeningRange;
import org.jawroom.placement.opening.OpeningSearch;
import org.jawroom.placement.search.BestPlace;
import org.jawroom.placement.space.FreeSpace;
import org.jawroom.placement.space.Window;
import org.jawroom.shop.Settings;

/**
 * The verdict over a set of regions, and the placement it rests on.
 *
 * @param bestMargin over the full opening range; empty if bolts line up nowhere or nothing can be
 *     hit
 * @param choice empty if bolts line up nowhere
 * @param openings the opening range that {@code choice} refers to
 */
record VerdictRule(
    Verdict verdict,
    OptionalLong bestMargin,
    Optional<BestPlace.Choice> choice,
    Interval openings) {

  /** For example two guards, each while cutting and while loading, plus the table. */
  private static final int FEW_BOXES = 6;

  static VerdictRule of(PreparedMachine machine, PreparedVise vise, List<Region> regions) {
    Interval full = vise.vise().opening();
    if (regions.isEmpty()) {
      return new VerdictRule(Verdict.NO_MOUNT, OptionalLong.empty(), Optional.empty(), full);
    }
    BestPlace places = places(regions, machine, vise, full);
    long best = places.bestMargin();
    if (best >= 0) {
      return of(Verdict.FITS, best, places, full);
    }
    if (clearWithoutTolerance(regions, full)) {
      return of(Verdict.MEASURE, best, places, full);
    }
    Optional<Interval> widest = usable(machine.settings(), regions, full);
    return widest.isPresent()
        ? limited(widest.get(), BestPlace.over(regions, machine, vise, widest.get()), best)
        : of(Verdict.NO_PLACE, best, places, full);
  }

  /** With few boxes, keeping obstacles that are never hit costs less than filtering them out. */
  private static BestPlace places(
      List<Region> regions, PreparedMachine machine, PreparedVise vise, Interval full) {
    if (regions.get(0).guards().boxCount() <= FEW_BOXES) {
      return BestPlace.over(regions, machine, vise, full);
    }
    BestPlace places = BestPlace.belowZero(regions, machine, vise, full);
    return places.isClear() ? places.aboveZero() : places;
  }

  boolean isHopeless() {
    return verdict == Verdict.NO_PLACE || verdict == Verdict.NO_MOUNT;
  }

  /** The usable openings for {@code fits} and {@code limited}; else empty. */
  Optional<Interval> usable() {
    return verdict == Verdict.FITS || verdict == Verdict.LIMITED
        ? Optional.of(openings)
        : Optional.empty();
  }

  private static VerdictRule of(Verdict verdict, long best, BestPlace places, Interval full) {
    BestPlace.Choice choice = places.recommended();
    OptionalLong known = best == Length.ENDLESS ? OptionalLong.empty() : OptionalLong.of(best);
    return new VerdictRule(verdict, known, Optional.of(choice), full);
  }

  /** Only meaningful if the pairing is not clear with tolerances. */
  private static boolean clearWithoutTolerance(List<Region> regions, Interval full) {
    for (Region region : regions) {
      if (region.swept().hasTolerance() || region.guards().hasTolerance()) {
        Obstacles exact =
            Obstacles.withoutTolerance(region.swept().over(full), region.guards(), region.turn());
        if (FreeSpace.belowZero(region.places(), exact).isClear(0, Window.EVERYWHERE)) {
          return true;
        }
      }
    }
    return false;
  }

  /**
   * The widest part of the opening range with a clear position, as printed; empty if it is narrower
   * than {@code least_opening}.
   */
  private static Optional<Interval> usable(Settings settings, List<Region> regions, Interval full) {
    if (full.length() < settings.leastOpening()) {
      return Optional.empty();
    }
    OpeningRange widest = OpeningSearch.widest(regions, full);
    return widest.isAtLeast(settings.leastOpening(), full)
        ? Optional.of(widest.printed(full, Settings.OPENING_GRAIN))
        : Optional.empty();
  }

  private static VerdictRule limited(Interval usable, BestPlace places, long bestOverFull) {
    long best = places.bestMargin();
    if (best < 0) {
      throw new IllegalStateException("no clear position over usable opening " + usable);
    }
    BestPlace.Choice choice = places.recommended();
    return new VerdictRule(
        Verdict.LIMITED, OptionalLong.of(bestOverFull), Optional.of(choice), usable);
  }
}
