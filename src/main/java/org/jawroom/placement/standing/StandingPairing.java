package org.jawroom.placement.standing;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.jawroom.clearance.Setup;
import org.jawroom.clearance.gap.Limit;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Rectangle;
import org.jawroom.placement.bolting.PreparedMachine;
import org.jawroom.placement.bolting.PreparedVise;
import org.jawroom.placement.bolting.Region;
import org.jawroom.placement.opening.OpeningRange;
import org.jawroom.placement.opening.OpeningSearch;
import org.jawroom.placement.pairing.Caveat;
import org.jawroom.placement.pairing.Inspection;
import org.jawroom.placement.pairing.Model;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.pairing.SolvedPairing;
import org.jawroom.placement.pairing.TurnedOpening;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.placement.search.Candidate;
import org.jawroom.placement.search.Recommendation;
import org.jawroom.placement.space.Place;
import org.jawroom.placement.standing.StandingOutcome.Says;
import org.jawroom.shop.Settings;
import org.jawroom.shop.Standing;

/** Judges a vise where it stands; pure. */
public final class StandingPairing {
  private final Standing standing;
  private final PreparedMachine machine;
  private final PreparedVise vise;
  private final SolvedPairing pairing;
  private final Place measured;
  private final Interval full;

  private StandingPairing(PreparedMachine machine, Standing standing) {
    this.standing = standing;
    this.machine = machine;
    this.vise = PreparedVise.on(machine, standing.vise());
    this.pairing = SolvedPairing.of(machine, vise);
    this.measured = new Place(standing.x(), standing.y());
    this.full = standing.vise().opening();
  }

  /** What is said of a vise where it stands, whatever else stands on the table. */
  public static StandingOutcome solve(Settings settings, Standing standing) {
    PreparedMachine machine = PreparedMachine.of(settings, standing.machine(), Setup.PLAIN);
    return new StandingPairing(machine, standing).solved();
  }

  private StandingOutcome solved() {
    Model model = pairing.model();
    Optional<Region> mounted = mounted(model.regions());
    Optional<Place> held = mounted.flatMap(this::held);
    if (held.isEmpty()) {
      return outcome(
          Says.OFF_SLOTS,
          Optional.empty(),
          Optional.empty(),
          OptionalLong.empty(),
          Optional.empty(),
          Optional.empty(),
          mounted.map(region -> nearest(region.places().rectangles())),
          OptionalLong.empty());
    }
    Region there = mounted.get().at(measured, standing.tolerance());
    Optional<Limit> limit = there.field(full).limit(measured.x(), measured.y());
    boolean fits = limit.isEmpty() || limit.get().margin() >= 0;
    Optional<Interval> usable = fits ? Optional.of(full) : usable(there);
    Says says = fits ? Says.FITS : usable.isPresent() ? Says.LIMITED : Says.HITS;
    Region shown =
        says == Says.LIMITED && standing.vise().isTurned()
            ? mounted(model.within(usable.get()).regions()).orElseThrow()
            : mounted.get();
    Interval kept = usable.orElse(full);
    Region anywhere = shown.at(measured, standing.tolerance());
    Inspection closer =
        Inspection.at(model, shown, held.get(), kept)
            .withNoseNotBelow(model.description().noseNotBelow(anywhere, measured, kept));
    return outcome(
        says,
        limit,
        usable,
        OptionalLong.of(shortfall(there)),
        Optional.of(closer),
        Optional.of(placed(says, usable, closer.place())),
        Optional.empty(),
        model.description().noseNotBelow(there, measured, full));
  }

  private Outcome placed(Says says, Optional<Interval> usable, Recommendation place) {
    Outcome outcome = pairing.outcome();
    return outcome.at(
        switch (says) {
          case FITS -> hasHandRoom() ? Verdict.FITS : Verdict.AWKWARD;
          case LIMITED -> Verdict.LIMITED;
          case HITS, OFF_SLOTS -> Verdict.NO_PLACE;
        },
        place,
        usable,
        usable.isPresent()
            ? pairing.caveatsAt(place)
            : outcome.caveats().stream().filter(Caveat.IN_DOUBT::equals).toList(),
        machine
            .settings()
            .evidence()
            .checked(
                machine.settings().clearance(),
                standing.machine(),
                standing.vise(),
                place.handleTo(),
                place.x(),
                place.y()));
  }

  private boolean hasHandRoom() {
    return isClear(pairing.model().regionsWithHandRoom());
  }

  private StandingOutcome outcome(
      Says says,
      Optional<Limit> limit,
      Optional<Interval> usable,
      OptionalLong reachShortfall,
      Optional<Inspection> there,
      Optional<Outcome> placed,
      Optional<Place> nearest,
      OptionalLong noseNotBelow) {
    Model model = pairing.model();
    boolean isSure = says == Says.FITS || !model.isOpen() || !isClear(model.atBest().regions());
    return new StandingOutcome(
        standing,
        pairing,
        says,
        limit,
        usable,
        reachShortfall,
        there,
        placed,
        nearest,
        noseNotBelow,
        isSure ? List.of() : model.blanks(),
        List.of(),
        List.of());
  }

  /** The turn and mount in which it stands; empty if they hold nowhere on the table. */
  private Optional<Region> mounted(List<Region> regions) {
    return mounted(standing, regions);
  }

  static Optional<Region> mounted(Standing standing, List<Region> regions) {
    return regions.stream()
        .filter(region -> region.turn() == standing.place().handleTo())
        .filter(region -> region.fastening().name().equals(standing.mount()))
        .findFirst();
  }

  /** The place within the tolerance at which it is held, the nearest to that measured. */
  private Optional<Place> held(Region region) {
    Rectangle within =
        new Rectangle(
            Interval.around(measured.x(), standing.tolerance()),
            Interval.around(measured.y(), standing.tolerance()));
    return region.places().meet(within).map(held -> nearest(held.rectangles()));
  }

  /** Of the places in rectangles the nearest: the least of the larger of both moves. */
  private Place nearest(List<Rectangle> rectangles) {
    return rectangles.stream()
        .map(
            places -> new Place(places.x().nearest(measured.x()), places.y().nearest(measured.y())))
        .min(
            Comparator.comparingLong(
                place ->
                    Math.max(
                        Math.abs(place.x() - measured.x()), Math.abs(place.y() - measured.y()))))
        .orElseThrow();
  }

  /** The widest opening, as printed, if it is wide enough to count. */
  private Optional<Interval> usable(Region there) {
    long least = machine.settings().leastOpening();
    if (full.length() < least) {
      return Optional.empty();
    }
    if (standing.vise().isTurned()) {
      return TurnedOpening.widest(full, least, this::isClearTurned);
    }
    OpeningRange widest = OpeningSearch.widest(List.of(there), full);
    return widest.isAtLeast(least, full)
        ? Optional.of(widest.printed(full, Settings.OPENING_GRAIN))
        : Optional.empty();
  }

  /** Whether it is clear turned, with its jaws kept to some openings. */
  private boolean isClearTurned(Interval openings) {
    return mounted(pairing.model().within(openings).regions())
        .map(region -> region.at(measured, standing.tolerance()))
        .filter(there -> there.field(openings).margin(measured.x(), measured.y()) >= 0)
        .isPresent();
  }

  private long shortfall(Region there) {
    Rectangle work = vise.workArea(there.turn());
    long off = standing.tolerance();
    Rectangle covered = new Rectangle(work.x().grown(off, off), work.y().grown(off, off));
    return Candidate.of(there, machine, full, covered).shortfall(measured);
  }

  /** Whether it is held somewhere within the tolerance, with margin ≥ 0 over the full opening. */
  private boolean isClear(List<Region> regions) {
    return mounted(regions)
        .filter(region -> held(region).isPresent())
        .map(region -> region.at(measured, standing.tolerance()))
        .filter(there -> there.field(full).margin(measured.x(), measured.y()) >= 0)
        .isPresent();
  }
}
