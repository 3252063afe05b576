package org.jawroom.advice.assess;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.ToLongFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jawroom.advice.Advice;
import org.jawroom.advice.blank.BlankGaps;
import org.jawroom.advice.merit.PairingMerit;
import org.jawroom.geometry.Length;
import org.jawroom.geometry.MonotoneSearch;
import org.jawroom.placement.job.JobOutcome;
import org.jawroom.placement.job.JobReason;
import org.jawroom.placement.job.JobVerdict;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.shop.Job;
import org.jawroom.shop.Shop;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.vise.Vise;

/** Compares candidate machines with what a shop owns. */
public final class Assessor {
  private final Shop shop;
  private final Map<Machine, List<Advice>> advice = new LinkedHashMap<>();
  private final Map<Machine, Map<Job, List<JobOutcome>>> jobs = new LinkedHashMap<>();
  private final List<ViseSize> sizes;
  private final OptionalLong tool;

  private Assessor(Shop shop, List<Advice> advice, List<JobOutcome> jobs, OptionalLong tool) {
    this.shop = shop;
    this.tool = tool;
    for (Machine machine : shop.machines()) {
      this.advice.put(machine, new ArrayList<>());
      Map<Job, List<JobOutcome>> ofMachine = new LinkedHashMap<>();
      shop.jobs().forEach(job -> ofMachine.put(job, new ArrayList<>()));
      this.jobs.put(machine, ofMachine);
    }
    for (Advice pairing : advice) {
      if (pairing.outcome().vise().quantity() > 0) {
        this.advice.get(pairing.outcome().machine()).add(pairing);
      }
    }
    this.advice.replaceAll((machine, all) -> onePerKind(all));
    for (JobOutcome job : jobs) {
      if (isOwned(job.vise())) {
        this.jobs.get(job.machine()).get(job.job()).add(job);
      }
    }
    this.sizes =
        shop.vises().stream()
            .filter(Assessor::isOwned)
            .map(ViseSize::of)
            .flatMap(Optional::stream)
            .toList();
  }

  /**
   * A vise on a swivel base is one kind, judged with its jaws square or, where it has no place so,
   * at the first angle at which it stands over its whole opening.
   */
  private static List<Advice> onePerKind(List<Advice> all) {
    Map<String, List<Advice>> kinds =
        all.stream()
            .collect(
                Collectors.groupingBy(
                    one -> one.outcome().vise().row(), LinkedHashMap::new, Collectors.toList()));
    return kinds.values().stream().map(Assessor::best).toList();
  }

  private static Advice best(List<Advice> angles) {
    Advice square = angles.get(0);
    return square.outcome().verdict() == Verdict.NO_PLACE
        ? angles.stream()
            .filter(one -> one.outcome().verdict().isClear())
            .findFirst()
            .orElse(square)
        : square;
  }

  /**
   * Assesses the candidates; pure.
   *
   * @param advice one per pairing of the shop, a turned vise after that of its row; {@code jobs}
   *     one per job and pairing
   * @param candidates at least one of the shop's machines; an owned one is compared with the others
   * @param tool the longest tool, nose to tip; empty: the longest of the jobs'
   */
  public static Assessment assess(
      Shop shop,
      List<Advice> advice,
      List<JobOutcome> jobs,
      List<Machine> candidates,
      OptionalLong tool) {
    OptionalLong longest =
        tool.isPresent()
            ? tool
            : shop.jobs().stream()
                .map(Job::toolLength)
                .filter(length -> !length.isBlank() && Length.isBounded(length.hi()))
                .mapToLong(Dimension::hi)
                .max();
    return new Assessor(shop, advice, jobs, longest).assess(candidates);
  }

  private Assessment assess(List<Machine> candidates) {
    List<Machine> owned =
        shop.machines().stream()
            .filter(machine -> !machine.candidate() && !candidates.contains(machine))
            .toList();
    List<Assessed> assessed = candidates.stream().map(this::assessed).toList();
    List<Vise> homeless =
        shop.vises().stream()
            .filter(Assessor::isOwned)
            .filter(vise -> owned.stream().noneMatch(machine -> fits(machine, vise)))
            .toList();
    return new Assessment(
        shop.settings(),
        assessed,
        owned.stream().map(this::assessed).toList(),
        homeless,
        (int) shop.vises().stream().filter(Assessor::isOwned).count(),
        shop.jobs().size(),
        pattern(),
        tool,
        BetterBuy.of(assessed));
  }

  private Assessed assessed(Machine machine) {
    List<Machine> others =
        shop.machines().stream()
            .filter(other -> !other.candidate() && !other.equals(machine))
            .toList();
    List<Job> held = jobs(machine, JobVerdict.HELD);
    List<Job> unknown = jobs(machine, JobVerdict.UNKNOWN);
    Optional<RoomSearch> search =
        pattern().map(vise -> new RoomSearch(shop.settings(), machine, vise));
    return new Assessed(
        machine,
        advice.get(machine),
        best(machine),
        held,
        held.stream().filter(job -> isUnchecked(machine, job)).toList(),
        held.stream().filter(job -> isInDoubt(machine, job)).toList(),
        unknown,
        shop.jobs().stream().filter(job -> isBarred(machine, job)).toList(),
        heldByNone(held, others),
        heldByNone(unknown, others),
        NutFit.of(machine, others),
        search.map(this::rooms).orElse(List.of()),
        search
            .filter(asked -> asked.blanks().stream().anyMatch(BlankGaps::isGap))
            .map(asked -> rooms(asked.atLeast()))
            .orElse(List.of()),
        search.map(RoomSearch::blanks).orElse(List.of()),
        machine.noseMax().lo() > 0
            ? OptionalLong.of(machine.noseMax().lo() - shop.settings().clearance() - tool.orElse(0))
            : OptionalLong.empty(),
        new Questions(shop.settings(), machine, advice.get(machine), jobs.get(machine)).all());
  }

  private List<Room> rooms(RoomSearch search) {
    return search.rooms(some(ViseSize::width), some(ViseSize::length));
  }

  private List<Job> heldByNone(List<Job> some, List<Machine> machines) {
    return some.stream()
        .filter(job -> machines.stream().noneMatch(other -> verdict(other, job) == JobVerdict.HELD))
        .toList();
  }

  private List<Job> jobs(Machine machine, JobVerdict verdict) {
    return shop.jobs().stream().filter(job -> verdict(machine, job) == verdict).toList();
  }

  /** The verdict with the vise that does best. */
  private JobVerdict verdict(Machine machine, Job job) {
    Set<JobVerdict> found = new TreeSet<>();
    jobs.get(machine).get(job).forEach(outcome -> found.add(outcome.verdict()));
    return Stream.of(JobVerdict.HELD, JobVerdict.UNKNOWN)
        .filter(found::contains)
        .findFirst()
        .orElse(JobVerdict.NOT_HELD);
  }

  private Optional<PairingMerit> best(Machine machine) {
    return advice.get(machine).stream()
        .map(Advice::outcome)
        .flatMap(
            outcome -> PairingMerit.of(shop.settings(), outcome, pieces(machine, outcome)).stream())
        .reduce((best, next) -> PairingMerit.OF_VISES.compare(next, best) > 0 ? next : best);
  }

  /** The pieces that the vise holds on the machine. */
  private long pieces(Machine machine, Outcome pairing) {
    return jobs.get(machine).values().stream()
        .flatMap(List::stream)
        .filter(job -> job.isHeld() && job.vise().equals(pairing.vise()))
        .mapToLong(job -> job.job().quantity())
        .sum();
  }

  /** Whether no vise holds the job there without something unchecked. */
  private boolean isUnchecked(Machine machine, Job job) {
    return jobs.get(machine).get(job).stream()
        .noneMatch(outcome -> outcome.isHeld() && outcome.unchecked().isEmpty());
  }

  /** Whether no vise holds the job there without a doubt. */
  private boolean isInDoubt(Machine machine, Job job) {
    return jobs.get(machine).get(job).stream()
        .noneMatch(outcome -> outcome.isHeld() && outcome.inDoubt().isEmpty());
  }

  private boolean isBarred(Machine machine, Job job) {
    return jobs.get(machine).get(job).stream()
        .anyMatch(
            outcome ->
                outcome.shortfalls().stream()
                    .anyMatch(shortfall -> shortfall.reason() == JobReason.MACHINE));
  }

  private boolean fits(Machine machine, Vise vise) {
    return advice.get(machine).stream()
        .map(Advice::outcome)
        .anyMatch(
            outcome -> outcome.vise().row().equals(vise.row()) && outcome.verdict().isClear());
  }

  private Optional<ViseSize> pattern() {
    // Ties go to the first.
    return sizes.stream().min(Comparator.comparingLong(size -> -size.top()));
  }

  /**
   * The least, the middle and the greatest value among the owned vises, rounded up to 0.01 mm,
   * ascending, without duplicates.
   */
  private List<Long> some(ToLongFunction<ViseSize> side) {
    List<Long> all =
        sizes.stream()
            .map(size -> Length.ceilTo(side.applyAsLong(size), MonotoneSearch.GRAIN))
            .sorted()
            .toList();
    return Stream.of(all.get(0), all.get(all.size() / 2), all.get(all.size() - 1))
        .distinct()
        .toList();
  }

  /**
   * A vise turned on its swivel base is none of its own, and the jobs that it holds at an angle do
   * not speak for a machine.
   */
  private static boolean isOwned(Vise vise) {
    return vise.quantity() > 0 && !vise.isTurned();
  }
}
