package org.jawroom.placement.job;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import org.jawroom.clearance.Certainty;
import org.jawroom.clearance.Setup;
import org.jawroom.clearance.obstacle.SweptParts;
import org.jawroom.clearance.part.JobPart;
import org.jawroom.clearance.part.Part;
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
import org.jawroom.shop.value.Measurand;
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
  private final PreparedMachine machine;
  private final PreparedVise prepared;
  private final Vise vise;
  private final Model model;
  private final List<Measurand> inDoubt;
  private JobPairing best;

  private JobPairing(PreparedMachine machine, PreparedVise vise, Model model) {
    this.machine = machine;
    this.prepared = vise;
    this.vise = vise.vise();
    this.model = model;
    this.inDoubt = machine.settings().evidence().suspects(machine.machine(), this.vise);
  }

  private static JobPairing of(Settings settings, Machine machine, Vise vise) {
    PreparedMachine prepared = PreparedMachine.of(settings, machine, Setup.PLAIN);
    PreparedVise on = PreparedVise.on(prepared, vise);
    return new JobPairing(prepared, on, Model.of(prepared, on));
  }

  /** The outcome of {@code job} held by {@code vise} on {@code machine}; pure. */
  public static JobOutcome solve(Settings settings, Machine machine, Vise vise, Job job) {
    return JobPairing.of(settings, machine, vise).solve(job);
  }

  /** The outcomes of several jobs in the given order; shared data is computed once. */
  public static List<JobOutcome> solve(
      Settings settings, Machine machine, Vise vise, List<Job> jobs) {
    return JobPairing.of(settings, machine, vise).solve(jobs);
  }

  /**
   * The same.
   *
   * @param model of machine and vise
   */
  public static List<JobOutcome> solve(
      PreparedMachine machine, PreparedVise vise, Model model, List<Job> jobs) {
    return new JobPairing(machine, vise, model).solve(jobs);
  }

  private List<JobOutcome> solve(List<Job> jobs) {
    List<JobOutcome> outcomes = new ArrayList<>(jobs.size());
    for (Job job : jobs) {
      outcomes.add(solve(job));
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
    JobPairing pairing = new JobPairing(machine, vise, model);
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
    if (worst.isHeld() || worst.missing.isEmpty()) {
      return outcome(job, worst, worst.isHeld() ? JobVerdict.HELD : JobVerdict.NOT_HELD);
    }
    Attempt atBest = atBest().attempt(job);
    if (!atBest.isHeld()) {
      // It fails for every value of the open readings.
      return outcome(job, atBest, JobVerdict.NOT_HELD);
    }
    return new JobOutcome(
        job,
        machine.machine(),
        vise,
        JobVerdict.UNKNOWN,
        Optional.empty(),
        List.of(),
        worst.checks.heights(),
        OptionalLong.empty(),
        Optional.empty(),
        OptionalLong.empty(),
        List.of(),
        worst.missing,
        inDoubt);
  }

  /**
   * A job with the open readings taken one way.
   *
   * @param missing the columns of the open readings it needs
   */
  private record Attempt(JobChecks checks, Optional<Recommendation> place, List<Column> missing) {

    boolean isHeld() {
      return checks.shortfalls().isEmpty();
    }
  }

  private Attempt attempt(Job job) {
    JobChecks checks = new JobChecks(machine, vise, job);
    checks.vise();
    List<Region> regions = regions(job);
    if (regions.isEmpty()) {
      checks.fails(Shortfall.of(model.hasPlaces() ? JobReason.TURN : JobReason.MOUNT));
    }
    // No search without an opening, a turn or the permission.
    Optional<Recommendation> place =
        checks.shortfalls().isEmpty()
            ? place(new BestPlace(candidates(job, regions)), checks)
            : Optional.empty();
    checks.toolAndLoad(List.of());
    return new Attempt(checks, place, missing(checks));
  }

  /** Finds the place to describe. At best there is none, and how far it fails would be a guess. */
  private Optional<Recommendation> place(BestPlace places, JobChecks checks) {
    OptionalLong shortfall = places.leastShortfall();
    boolean isShort = shortfall.isPresent() && shortfall.getAsLong() > 0;
    if (machine.certainty() == Certainty.AT_BEST) {
      if (shortfall.isEmpty() || isShort) {
        checks.fails(Shortfall.of(isShort ? JobReason.REACH : JobReason.HIT));
      }
      return Optional.empty();
    }
    BestPlace.Choice choice =
        shortfall.isPresent() ? places.recommendedOf(shortfall.getAsLong()) : places.recommended();
    if (isShort) {
      checks.fails(Shortfall.of(JobReason.REACH, shortfall.getAsLong()));
    } else if (shortfall.isEmpty()) {
      checks.fails(Shortfall.of(JobReason.HIT, -choice.margin()));
    }
    return Optional.of(model.description().of(choice));
  }

  private List<Column> missing(JobChecks checks) {
    if (checks.open().isEmpty()) {
      return model.blanks();
    }
    Set<Column> missing = EnumSet.copyOf(checks.open().columns());
    missing.addAll(model.blanks());
    return List.copyOf(missing);
  }

  private Optional<JobOutcome> heldInRow(Job job, Beside row) {
    JobChecks checks = new JobChecks(machine, vise, job);
    checks.vise();
    checks.toolAndLoad(row.others());
    Place place = row.place();
    Rectangle part = Footprint.part(vise, job, row.stand().handleTo());
    if (!checks.shortfalls().isEmpty()
        || machine.reach().shortfall(part, place.x(), place.y()) > 0
        || !row.leavesRoom(vise, job)) {
      return Optional.empty();
    }
    List<Region> own =
        regions(job).stream().filter(region -> isRegion(row.stand(), region)).toList();
    return candidates(job, own).stream()
        .filter(seat -> seat.space().isClear(0, row.window()))
        .findFirst()
        .map(seat -> Optional.of(model.description().of(seat, place)))
        .map(found -> new Attempt(checks, found, missing(checks)))
        .map(attempt -> outcome(job, attempt, JobVerdict.HELD));
  }

  /** The same with open readings at best; made when the first job asks for it. */
  private JobPairing atBest() {
    if (best == null) {
      best = new JobPairing(machine.atBest(), prepared.atBest(), model.atBest());
    }
    return best;
  }

  private JobOutcome outcome(Job job, Attempt attempt, JobVerdict verdict) {
    JobChecks checks = attempt.checks;
    return new JobOutcome(
        job,
        machine.machine(),
        vise,
        verdict,
        attempt.place,
        checks.shortfalls(),
        checks.heights(),
        checks.toolRoom(),
        checks.loadRoom(),
        stickOut(attempt.place, checks.heights().hi()),
        checks.unchecked(),
        attempt.missing,
        inDoubt);
  }

  private static OptionalLong stickOut(Optional<Recommendation> place, long top) {
    OptionalLong nose = place.isPresent() ? place.get().noseNotBelow() : OptionalLong.empty();
    return nose.isPresent()
        ? OptionalLong.of(Math.max(0, nose.getAsLong() - top))
        : OptionalLong.empty();
  }

  /** The closed range from the opening that grips the workpiece to the one that lets it in. */
  private Interval openings(Job job) {
    Settings settings = machine.settings();
    long more = Math.max(settings.jawPlay(), settings.loadRoom());
    return Interval.of(job.width(), Math.min(job.width() + more, vise.opening().hi()));
  }

  private List<Candidate> candidates(Job job, List<Region> regions) {
    Interval openings = openings(job);
    List<Part> work = JobPart.of(vise, job);
    List<Candidate> candidates = new ArrayList<>(regions.size());
    for (int i = 0; i < regions.size(); i++) {
      Region region = regions.get(i);
      // A mount has the same parts in every turn.
      int first = 0;
      while (regions.get(first).swept() != region.swept()) {
        first++;
      }
      SweptParts parts =
          first < i
              ? candidates.get(first).region().swept()
              : region.swept().withWork(work, openings);
      candidates.add(
          Candidate.of(
              region.with(parts), machine, openings, Footprint.part(vise, job, region.turn())));
    }
    return candidates;
  }

  /**
   * The regions whose turn sets the jaws as the job requires. Turned on a swivel base they lie
   * along neither axis.
   */
  private List<Region> regions(Job job) {
    if (job.jawsAlong().isEmpty()) {
      return model.regions();
    }
    List<Region> regions = new ArrayList<>(model.regions().size());
    for (Region region : model.regions()) {
      if (!vise.isTurned() && jaws(region) == job.jawsAlong().get()) {
        regions.add(region);
      }
    }
    return regions;
  }

  /** The jaw faces stand across the axis of opening. */
  private static Axis jaws(Region region) {
    return region.turn().uAxis() == Axis.X ? Axis.Y : Axis.X;
  }

  /** The region of a placement, the workpiece among its parts. */
  private Region region(Job job, Recommendation place) {
    return regions(job).stream()
        .filter(region -> isRegion(place, region))
        .map(region -> region.with(region.swept().withWork(JobPart.of(vise, job), openings(job))))
        .findFirst()
        .orElseThrow();
  }

  private static boolean isRegion(Recommendation place, Region region) {
    return region.turn() == place.handleTo() && region.fastening().equals(place.fastening());
  }
}
