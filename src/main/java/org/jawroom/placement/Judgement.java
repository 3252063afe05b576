package org.jawroom.placement;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.jawroom.clearance.MarginField;
import org.jawroom.geometry.Interval;
import org.jawroom.shop.Machine;
import org.jawroom.shop.Settings;
import org.jawroom.shop.Vise;

/**
 * The verdict over given regions, and the place it rests on.
 *
 * @param bestMargin over the full opening; empty where bolts line up nowhere or nothing can be hit
 * @param choice empty where bolts line up nowhere
 * @param openings the opening range that {@code choice} speaks of
 */
record Judgement(
    Verdict verdict,
    OptionalLong bestMargin,
    Optional<BestPlace.Choice> choice,
    Interval openings) {

  static Judgement of(Settings settings, Machine machine, Vise vise, List<Region> regions) {
    Interval full = vise.opening();
    if (regions.isEmpty()) {
      return new Judgement(Verdict.NO_MOUNT, OptionalLong.empty(), Optional.empty(), full);
    }
    BestPlace places = over(regions, machine, vise, full);
    long best = places.bestMargin();
    if (best >= 0) {
      return of(Verdict.FITS, best, places, full);
    }
    if (clearWithoutTolerance(regions, full)) {
      return of(Verdict.MEASURE, best, places, full);
    }
    return usable(settings, regions, full)
        .flatMap(widest -> limited(settings, machine, vise, regions, widest, best))
        .orElseGet(() -> of(Verdict.NO_PLACE, best, places, full));
  }

  boolean isHopeless() {
    return verdict == Verdict.NO_PLACE || verdict == Verdict.NO_MOUNT;
  }

  /** For {@code fits} and {@code limited} the openings that may be used. */
  Optional<Interval> usable() {
    return verdict == Verdict.FITS || verdict == Verdict.LIMITED
        ? Optional.of(openings)
        : Optional.empty();
  }

  private static Judgement of(Verdict verdict, long best, BestPlace places, Interval full) {
    BestPlace.Choice choice = places.recommended(best);
    OptionalLong told =
        choice.seat().region().pairs().isEmpty() ? OptionalLong.empty() : OptionalLong.of(best);
    return new Judgement(verdict, told, Optional.of(choice), full);
  }

  private static BestPlace over(
      List<Region> regions, Machine machine, Vise vise, Interval openings) {
    return new BestPlace(
        regions.stream().map(region -> Seat.of(region, machine, vise, openings)).toList());
  }

  private static boolean clearWithoutTolerance(List<Region> regions, Interval full) {
    return regions.stream()
        .map(
            region ->
                new FreeSpace(
                    region.places(),
                    MarginField.withoutTolerance(region.pairs(), region.turn(), full)))
        .anyMatch(space -> space.find(0, Window.EVERYWHERE).isPresent());
  }

  /** The widest part of the opening with a clear place, if it is wide enough to be of use. */
  private static Optional<OpeningRange> usable(
      Settings settings, List<Region> regions, Interval full) {
    if (full.length() < settings.leastOpening()) {
      return Optional.empty();
    }
    OpeningRange widest = OpeningSearch.widest(regions, full);
    return widest.isAtLeast(settings.leastOpening(), full)
        ? Optional.of(widest)
        : Optional.empty();
  }

  private static Optional<Judgement> limited(
      Settings settings,
      Machine machine,
      Vise vise,
      List<Region> regions,
      OpeningRange widest,
      long bestOverFull) {
    Interval full = vise.opening();
    Interval printed = widest.printed(full, Settings.OPENING_GRAIN);
    while (true) {
      BestPlace places = over(regions, machine, vise, printed);
      long best = places.bestMargin();
      if (best >= 0) {
        return Optional.of(
            new Judgement(
                Verdict.LIMITED,
                OptionalLong.of(bestOverFull),
                Optional.of(places.recommended(best)),
                printed));
      }
      // The widest range stands at a place that need not be a whole half-nanometre. Where its printed ends
      // leave it no whole one, a grain less does.
      long lo = printed.lo() == full.lo() ? full.lo() : printed.lo() + Settings.OPENING_GRAIN;
      long hi = printed.hi() == full.hi() ? full.hi() : printed.hi() - Settings.OPENING_GRAIN;
      if (lo > hi || printed.equals(Interval.of(lo, hi))) {
        return Optional.empty();
      }
      printed = Interval.of(lo, hi);
    }
  }
}
