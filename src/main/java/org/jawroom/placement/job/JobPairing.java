package org.jawroom.placement.job;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import org.jawroom.clearance.Certainty;
import org.jawroom.clearance.Setup;
import org.jawroom.clearance.obstacle.SweptParts;
import org.jawroom.clearance.part.JobPart;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Rectangle;
import org.jawroom.placement.bolting.Footprint;
import org.jawroom.placement.bolting.PreparedMachine;
import org.jawroom.placement.bolting.PreparedVise;
import org.jawroom.placement.bolting.Region;
import org.jawroom.placement.pairing.Inspection;
import org.jawroom.placement.pairing.Model;
import org.jawroom.placement.search.BestPlace;
import org.jawroom.placement.search.Candidate;
import org.jawroom.placement.search.Recommendation;
import org.jawroom.placement.space.Place;
import org.jawroom.shop.Job;
import org.jawroom.shop.Settings;
import org.jawroom.shop.Shop;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.value.Column;
import org.jawroom.shop.vise.Vise;

/**
 * Decides jobs on one machine with one vise.
 *
 * <p>Compared with the plain pairing a job uses fewer openings, from part_width to part_width + the
 * larger of {@code jaw_play} and {@code load_room} (at most the vise's greatest), asks for no hand
 * room, and has one more part that can hit, the workpiece. It is <i>held</i> if some position has
 * margin ≥ 0 over those openings with the workpiece within the spindle's reach (touching its edge
 * counts), and jaws, tools and load allow it; see {@link JobReason}. Among several such positions
 * the order of preference is that of pairings, with the workpiece as work area.
 *
 * <p>Open readings are judged as for pairings: a job held at worst is held, one not held at best is
 * not held, any other unknown. What only tools and load need is unchecked where it is blank.
 */
public final class JobPairing {
  private final Settings settings;
  private final Machine machine;
  private final Vise vise;
  private final PreparedMachine prepared;
  private final PreparedVise preparedVise;
  private final Certainty certainty;
  private final Model model;
  private JobPairing best;

  private JobPairing(PreparedMachine machine, PreparedVise vise, Model model, Certainty certainty) {
    this.settings = machine.settings();
    this.machine = machine.machine();
    this.vise = vise.vise();
    this.prepared = machine;
    this.preparedVise = vise;
    this.certainty = certainty;
    this.model = model;
  }

  private static JobPairing of(Settings settings, Machine machine, Vise vise) {
    PreparedMachine prepared = PreparedMachine.of(settings, machine, Setup.PLAIN);
    PreparedVise on = PreparedVise.on(prepared, vise);
    return new JobPairing(prepared, on, Model.of(prepared, on), Certainty.AT_WORST);
  }

  /** The outcome of {@code job} held by {@code vise} on {@code machine}; pure. */
  public static JobOutcome solve(Settings settings, Machine machine, Vise vise, Job job) {
    return JobPairing.of(settings, machine, vise).solve(job);
  }

  /** The outcomes of several jobs in the given order; shared data is computed once. */
  public static List<JobOutcome> solve(
      Settings settings, Machine machine, Vise vise, List<Job> jobs) {
    JobPairing pairing = JobPairing.of(settings, machine, vise);
    return jobs.stream().map(pairing::solve).toList();
  }

  /**
   * The same.
   *
   * @param model of machine and vise
   */
  public static List<JobOutcome> solve(
      PreparedMachine machine, PreparedVise vise, Model model, List<Job> jobs) {
    JobPairing pairing = new JobPairing(machine, vise, model, Certainty.AT_WORST);
    List<JobOutcome> outcomes = new ArrayList<>(jobs.size());
    for (Job job : jobs) {
      outcomes.add(pairing.solve(job));
    }
    return outcomes;
  }

  /**
   * The jobs that a vise holds where it stands in a row, and nowhere else, in the given order. Open
   * readings are taken at worst: what is not certain is not held.
   *
   * @param model of machine and vise
   */
  public static List<JobOutcome> heldInRow(
      PreparedMachine machine, PreparedVise vise, Model model, Beside row, List<Job> jobs) {
    JobPairing pairing = new JobPairing(machine, vise, model, Certainty.AT_WORST);
    return jobs.stream().flatMap(job -> pairing.heldInRow(job, row).stream()).toList();
  }

  /** Every job of a shop on every pairing: jobs, then machines, then vises in input order. */
  public static List<JobOutcome> all(Shop shop) {
    List<List<JobOutcome>> ofPairings = new ArrayList<>();
    for (Machine machine : shop.machines()) {
      for (Vise vise : shop.vises()) {
        ofPairings.add(solve(shop.settings(), machine, vise, shop.jobs()));
      }
    }
    return jobsFirst(ofPairings, shop.jobs().size());
  }

  /** Transposes outcomes grouped by pairing, {@code jobs} in each, into outcomes grouped by job. */
  public static List<JobOutcome> jobsFirst(List<List<JobOutcome>> ofPairings, int jobs) {
    List<JobOutcome> outcomes = new ArrayList<>(jobs * ofPairings.size());
    for (int job = 0; job < jobs; job++) {
      for (List<JobOutcome> pairing : ofPairings) {
        outcomes.add(pairing.get(job));
      }
    }
    return outcomes;
  }

  /** {@link #solve} plus every pair at the placement. */
  public static JobExplanation explain(Settings settings, Machine machine, Vise vise, Job job) {
    JobPairing pairing = JobPairing.of(settings, machine, vise);
    JobOutcome outcome = pairing.solve(job);
    Optional<Inspection> inspection =
        outcome
            .place()
            .map(
                place ->
                    Inspection.of(
                        pairing.model,
                        pairing.region(job, place),
                        place,
                        Footprint.part(vise, job, place.handleTo())));
    return new JobExplanation(
        outcome,
        inspection.map(Inspection::pairs).orElse(List.of()),
        inspection.map(Inspection::layout),
        inspection.flatMap(Inspection::range));
  }

  private JobOutcome solve(Job job) {
    Attempt worst = attempt(job);
    if (!worst.isOpen || worst.shortfalls.isEmpty()) {
      return outcome(
          job, worst, worst.shortfalls.isEmpty() ? JobVerdict.HELD : JobVerdict.NOT_HELD);
    }
    Attempt atBest = atBest().attempt(job);
    if (!atBest.shortfalls.isEmpty()) {
      // It fails for every value of the open readings; how far is a guess.
      return outcome(job, atBest.withoutPlace(), JobVerdict.NOT_HELD);
    }
    return new JobOutcome(
        job,
        machine,
        vise,
        JobVerdict.UNKNOWN,
        Optional.empty(),
        List.of(),
        JobPart.heights(vise, job),
        OptionalLong.empty(),
        Optional.empty(),
        OptionalLong.empty(),
        List.of(),
        worst.missing,
        settings.evidence().suspects(machine, vise));
  }

  /**
   * A job with the open readings taken one way.
   *
   * @param isOpen whether it needs an open reading
   * @param missing the columns of these
   */
  private record Attempt(
      JobChecks checks,
      Optional<Recommendation> place,
      List<Shortfall> shortfalls,
      boolean isOpen,
      List<Column> missing) {

    Attempt withoutPlace() {
      List<Shortfall> bare = shortfalls.stream().map(Attempt::withoutGuess).toList();
      return new Attempt(checks, Optional.empty(), bare, isOpen, missing);
    }

    private static Shortfall withoutGuess(Shortfall shortfall) {
      return shortfall.reason() == JobReason.HIT || shortfall.reason() == JobReason.REACH
          ? Shortfall.of(shortfall.reason())
          : shortfall;
    }
  }

  private Attempt attempt(Job job) {
    JobChecks checks = JobChecks.of(settings, machine, vise, List.of(), job, certainty);
    List<Shortfall> shortfalls = new ArrayList<>(checks.shortfalls());
    List<Region> regions = regions(job);
    if (regions.isEmpty()) {
      shortfalls.add(Shortfall.of(model.hasPlaces() ? JobReason.TURN : JobReason.MOUNT));
    }
    Optional<Recommendation> place = Optional.empty();
    if (shortfalls.stream().noneMatch(shortfall -> shortfall.reason().barsPlaces())) {
      List<Candidate> candidates = candidates(job, regions);
      BestPlace places = new BestPlace(candidates);
      boolean isClear = places.isClear();
      long shortfall = isClear ? places.leastShortfall() : 0;
      if (certainty == Certainty.AT_WORST) {
        BestPlace.Choice choice =
            isClear ? recommendedWithin(shortfall, candidates) : places.recommended();
        place = Optional.of(model.description().of(choice));
      }
      if (!isClear) {
        shortfalls.add(Shortfall.of(JobReason.HIT, -places.bestMargin()));
      } else if (shortfall > 0) {
        shortfalls.add(Shortfall.of(JobReason.REACH, shortfall));
      }
    }
    shortfalls.sort(Comparator.comparing(Shortfall::reason));
    return attempt(checks, place, shortfalls);
  }

  private Attempt attempt(
      JobChecks checks, Optional<Recommendation> place, List<Shortfall> shortfalls) {
    Set<Column> missing = EnumSet.noneOf(Column.class);
    missing.addAll(model.blanks());
    missing.addAll(checks.open());
    return new Attempt(checks, place, shortfalls, !missing.isEmpty(), List.copyOf(missing));
  }

  private Optional<JobOutcome> heldInRow(Job job, Beside row) {
    JobChecks checks = JobChecks.of(settings, machine, vise, row.others(), job, certainty);
    Place place = row.place();
    Rectangle part = Footprint.part(vise, job, row.stand().handleTo());
    if (!checks.shortfalls().isEmpty()
        || prepared.reach().shortfall(part, place.x(), place.y()) > 0
        || !row.leavesRoom(vise, job)) {
      return Optional.empty();
    }
    List<Region> own =
        regions(job).stream().filter(region -> isRegion(row.stand(), region)).toList();
    return candidates(job, own).stream()
        .filter(seat -> seat.space().isClear(0, row.window()))
        .findFirst()
        .map(seat -> Optional.of(model.description().of(seat, place)))
        .map(found -> attempt(checks, found, List.of()))
        .map(attempt -> outcome(job, attempt, JobVerdict.HELD));
  }

  /** The same with open readings at best; made when the first job asks for it. */
  private JobPairing atBest() {
    if (best == null) {
      best =
          new JobPairing(
              prepared.atBest(), preparedVise.atBest(), model.atBest(), Certainty.AT_BEST);
    }
    return best;
  }

  private JobOutcome outcome(Job job, Attempt attempt, JobVerdict verdict) {
    Interval heights = JobPart.heights(vise, job);
    return new JobOutcome(
        job,
        machine,
        vise,
        verdict,
        attempt.place,
        attempt.shortfalls,
        heights,
        attempt.checks.toolRoom(),
        attempt.checks.loadRoom(),
        stickOut(attempt.place, heights.hi()),
        attempt.checks.unchecked(),
        attempt.missing,
        settings.evidence().suspects(machine, vise));
  }

  private static OptionalLong stickOut(Optional<Recommendation> place, long top) {
    OptionalLong nose = place.map(Recommendation::noseNotBelow).orElse(OptionalLong.empty());
    return nose.isPresent()
        ? OptionalLong.of(Math.max(0, nose.getAsLong() - top))
        : OptionalLong.empty();
  }

  /** The preferred placement among those with margin ≥ 0 and at most that reach shortfall. */
  private static BestPlace.Choice recommendedWithin(long shortfall, List<Candidate> candidates) {
    return new BestPlace(
            candidates.stream().flatMap(candidate -> candidate.within(shortfall).stream()).toList())
        .recommended();
  }

  /** The closed range from the opening that grips the workpiece to the one that lets it in. */
  private Interval openings(Job job) {
    long more = Math.max(settings.jawPlay(), settings.loadRoom());
    return Interval.of(job.width(), Math.min(job.width() + more, vise.opening().hi()));
  }

  private List<Candidate> candidates(Job job, List<Region> regions) {
    Map<SweptParts, SweptParts> withPart = new HashMap<>();
    List<Candidate> candidates = new ArrayList<>(regions.size());
    for (Region region : regions) {
      SweptParts parts = withPart.computeIfAbsent(region.swept(), swept -> withPart(swept, job));
      candidates.add(
          Candidate.of(
              region.with(parts),
              prepared,
              openings(job),
              Footprint.part(vise, job, region.turn())));
    }
    return candidates;
  }

  private SweptParts withPart(SweptParts swept, Job job) {
    return swept.with(JobPart.of(vise, job), openings(job));
  }

  /**
   * The regions whose turn sets the jaws as the job requires. Turned on a swivel base they lie
   * along neither axis.
   */
  private List<Region> regions(Job job) {
    if (job.jawsAlong().isEmpty()) {
      return model.regions();
    }
    return model.regions().stream()
        .filter(region -> !vise.isTurned() && jaws(region) == job.jawsAlong().get())
        .toList();
  }

  /** The jaw faces stand across the axis of opening. */
  private static Axis jaws(Region region) {
    return region.turn().uAxis() == Axis.X ? Axis.Y : Axis.X;
  }

  /** The region of a placement, the workpiece among its parts. */
  private Region region(Job job, Recommendation place) {
    return regions(job).stream()
        .filter(region -> isRegion(place, region))
        .map(region -> region.with(withPart(region.swept(), job)))
        .findFirst()
        .orElseThrow();
  }

  private static boolean isRegion(Recommendation place, Region region) {
    return region.turn() == place.handleTo() && region.fastening().equals(place.fastening());
  }
}
