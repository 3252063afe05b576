package org.jawroom.placement.pairing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.jawroom.clearance.obstacle.Obstacles;
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
 * @param bestMargin over the full opening range; empty if the vise mounts nowhere or nothing can be
 *     hit
 * @param choice empty if the vise mounts nowhere
 * @param usable the usable opening as printed, if any
 * @param regions those that the numbers refer to: for {@code fits} with hand room, for a turned
 *     vise that is {@code limited} with what turns over the usable opening alone
 */
record VerdictRule(
    Verdict verdict,
    OptionalLong bestMargin,
    Optional<BestPlace.Choice> choice,
    Optional<Interval> usable,
    List<Region> regions) {

  /** For example two guards, each while cutting and while loading, plus the table. */
  private static final int FEW_BOXES = 6;

  /**
   * The verdict on a pairing.
   *
   * @param regions without hand room
   */
  static VerdictRule of(
      PreparedMachine machine,
      PreparedVise vise,
      PreparedMachine.Guards guards,
      List<Region> regions) {
    Interval full = vise.vise().opening();
    if (regions.isEmpty()) {
      return new VerdictRule(
          Verdict.NO_MOUNT, OptionalLong.empty(), Optional.empty(), Optional.empty(), regions);
    }
    boolean handMatters = vise.hasHandle() && guards.handAsksMore();
    if (handMatters) {
      List<Region> withHand = withHandRoom(regions, guards);
      Optional<BestPlace> roomy = clear(withHand, machine, vise, full);
      if (roomy.isPresent()) {
        return of(Verdict.FITS, roomy.get(), Optional.of(full), withHand);
      }
    }
    BestPlace places = places(regions, machine, vise, full);
    if (places.bestMargin() >= 0) {
      return of(handMatters ? Verdict.AWKWARD : Verdict.FITS, places, Optional.of(full), regions);
    }
    Optional<Interval> usable = usable(machine, vise, regions);
    if (clearWithoutTolerance(regions, full)) {
      return of(Verdict.MEASURE, places, usable, regions);
    }
    return usable.isPresent()
        ? limited(
            usable.get(),
            BestPlace.over(regions, machine, vise, usable.get()),
            places.bestMargin(),
            regions)
        : of(Verdict.NO_PLACE, places, usable, regions);
  }

  /**
   * {@code no place} or {@code no mount}, if that is the verdict over the regions; a turned vise
   * may have a {@link TurnedOpening} for all that.
   */
  static Optional<Verdict> hopeless(
      PreparedMachine machine, PreparedVise vise, List<Region> regions) {
    Interval full = vise.vise().opening();
    if (regions.isEmpty()) {
      return Optional.of(Verdict.NO_MOUNT);
    }
    boolean hopes =
        BestPlace.belowZero(regions, machine, vise, full).isClear()
            || usable(machine, vise, regions).isPresent()
            || clearWithoutTolerance(regions, full);
    return hopes ? Optional.empty() : Optional.of(Verdict.NO_PLACE);
  }

  /** The same regions with hand room round the handle while loading. */
  static List<Region> withHandRoom(List<Region> regions, PreparedMachine.Guards guards) {
    List<Region> roomy = new ArrayList<>(regions.size());
    for (Region region : regions) {
      roomy.add(region.with(guards.withHandRoom()));
    }
    return roomy;
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

  /**
   * This of a turned vise that has no place over its full opening.
   *
   * @param within the model with the jaws kept to {@code usable}, over which some position is clear
   */
  VerdictRule limited(Interval usable, Model within) {
    return limited(
        usable,
        BestPlace.over(within.regions(), within.machine(), within.vise(), usable),
        bestMargin.orElseThrow(),
        within.regions());
  }

  /** The candidates, if some position has margin ≥ 0. */
  private static Optional<BestPlace> clear(
      List<Region> regions, PreparedMachine machine, PreparedVise vise, Interval full) {
    boolean few = regions.get(0).guards().boxCount() <= FEW_BOXES;
    BestPlace places =
        few
            ? BestPlace.over(regions, machine, vise, full)
            : BestPlace.belowZero(regions, machine, vise, full);
    return places.isClear() ? Optional.of(few ? places : places.aboveZero()) : Optional.empty();
  }

  boolean isHopeless() {
    return verdict == Verdict.NO_PLACE || verdict == Verdict.NO_MOUNT;
  }

  private static VerdictRule of(
      Verdict verdict, BestPlace places, Optional<Interval> usable, List<Region> regions) {
    long best = places.bestMargin();
    OptionalLong known = best == Length.ENDLESS ? OptionalLong.empty() : OptionalLong.of(best);
    return new VerdictRule(verdict, known, Optional.of(places.recommended()), usable, regions);
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
   * The widest part of the opening range with a clear settable position, as printed; if that is
   * narrower than {@code least_opening}, the widest with a clear position; empty if that is, too,
   * and for a turned vise, which {@link TurnedOpening} is for.
   */
  private static Optional<Interval> usable(
      PreparedMachine machine, PreparedVise vise, List<Region> regions) {
    Interval full = vise.vise().opening();
    long least = machine.settings().leastOpening();
    if (full.length() < least || vise.vise().isTurned()) {
      return Optional.empty();
    }
    List<Region> hopeful = OpeningSearch.hopeful(regions, full);
    OpeningRange widest = OpeningSearch.widestSettable(hopeful, machine, full);
    if (!widest.isAtLeast(least, full)) {
      widest = OpeningSearch.widest(hopeful, full);
    }
    return widest.isAtLeast(least, full)
        ? Optional.of(widest.printed(full, Settings.OPENING_GRAIN))
        : Optional.empty();
  }

  private static VerdictRule limited(
      Interval usable, BestPlace places, long bestOverFull, List<Region> regions) {
    if (places.bestMargin() < 0) {
      throw new IllegalStateException("no clear position over usable opening " + usable);
    }
    return new VerdictRule(
        Verdict.LIMITED,
        OptionalLong.of(bestOverFull),
        Optional.of(places.recommended()),
        Optional.of(usable),
        regions);
  }
}
