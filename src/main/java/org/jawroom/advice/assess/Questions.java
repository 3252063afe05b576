package org.jawroom.advice.assess;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.LongPredicate;
import org.jawroom.advice.Advice;
import org.jawroom.advice.blank.BlankGaps;
import org.jawroom.advice.blank.BlankLimit;
import org.jawroom.advice.blank.Relation;
import org.jawroom.clearance.part.JobPart;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Length;
import org.jawroom.geometry.MonotoneSearch;
import org.jawroom.placement.job.JobOutcome;
import org.jawroom.placement.job.JobPairing;
import org.jawroom.placement.job.JobVerdict;
import org.jawroom.placement.job.Unchecked;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.shop.Job;
import org.jawroom.shop.OpenReading;
import org.jawroom.shop.Settings;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.machine.Side;
import org.jawroom.shop.value.Column;

/** Collects the questions about one machine's open readings: blanks and ranges. */
final class Questions {
  private final Settings settings;
  private final Machine machine;
  private final List<Advice> vises;
  private final Map<Job, List<JobOutcome>> jobs;

  /**
   * @param vises one per vise on the machine
   * @param jobs for each job its outcomes with those vises
   */
  Questions(
      Settings settings, Machine machine, List<Advice> vises, Map<Job, List<JobOutcome>> jobs) {
    this.settings = settings;
    this.machine = machine;
    this.vises = vises;
    this.jobs = jobs;
  }

  /** One question per open reading of the machine, in table order. */
  List<Question> all() {
    List<Question> questions = new ArrayList<>();
    for (Column column : Column.values()) {
      if (column == Column.GUARD_GAP) {
        machine.guardRows().stream()
            .filter(guard -> guard.gap().isOpen())
            .forEach(guard -> questions.add(question(OpenReading.of(machine, guard))));
      } else if (isOpen(column)) {
        questions.add(question(OpenReading.of(machine, column)));
      }
    }
    return questions;
  }

  private boolean isOpen(Column column) {
    return switch (column) {
      case FRONT_GAP -> machine.gap(Side.FRONT).isOpen();
      case REAR_GAP -> machine.gap(Side.REAR).isOpen();
      case LEFT_GAP -> machine.gap(Side.LEFT).isOpen();
      case RIGHT_GAP -> machine.gap(Side.RIGHT).isOpen();
      case SLOT_WIDTH -> machine.slots().width().isOpen();
      case SLOT_PITCH -> machine.slots().needsPitch() && machine.slots().pitch().isOpen();
      case NOSE_MIN -> machine.noseMin().isOpen();
      case NOSE_MAX -> machine.noseMax().isOpen();
      case MAX_LOAD -> machine.maxLoad().isEmpty();
      default -> false;
    };
  }

  private Question question(OpenReading reading) {
    Column column = reading.column();
    Map<String, Question.Change> changes = new LinkedHashMap<>();
    List<String> open = new ArrayList<>();
    for (Advice vise : vises) {
      if (vise.outcome().verdict() == Verdict.UNKNOWN
          && vise.outcome().missing().contains(column)) {
        String name = vise.outcome().vise().name();
        Optional<BlankLimit> limit =
            vise.limits().stream().filter(blank -> blank.reading().equals(reading)).findFirst();
        if (limit.isPresent()) {
          changes.put("vise " + name, change(vise, limit.get(), name));
        } else {
          open.add(name);
        }
      }
    }
    jobs.forEach(
        (job, outcomes) -> {
          if (isOpen(outcomes, column)) {
            Optional<Question.Change> change = change(job, outcomes, reading);
            change.ifPresentOrElse(
                known -> changes.put("job " + job.name(), known), () -> open.add(job.name()));
          }
        });
    return new Question(reading, List.copyOf(changes.values()), open);
  }

  private Question.Change change(Advice vise, BlankLimit limit, String name) {
    return new Question.Change(
        name,
        false,
        vise.outcome().openReadings().size() == 1,
        limit.relation(),
        limit.limit(),
        limit.sure(),
        Optional.empty());
  }

  /** Whether no vise holds the job whatever the column is, and with some vise it depends on it. */
  private boolean isOpen(List<JobOutcome> outcomes, Column column) {
    return outcomes.stream().noneMatch(one -> one.isHeld() && !hangsOn(one, column))
        && outcomes.stream().anyMatch(outcome -> hangsOn(outcome, column));
  }

  /** A blank nose or load leaves something unchecked instead of making the job unknown. */
  private boolean hangsOn(JobOutcome outcome, Column column) {
    if (outcome.verdict() == JobVerdict.NOT_HELD) {
      return false;
    }
    boolean unknown = outcome.verdict() == JobVerdict.UNKNOWN;
    boolean tool = unknown || outcome.unchecked().contains(Unchecked.TOOL);
    return switch (column) {
      case NOSE_MAX -> tool;
      case NOSE_MIN ->
          outcome.missing().contains(column) || settings.shortestTool().isPresent() && tool;
      case MAX_LOAD -> unknown || outcome.unchecked().contains(Unchecked.LOAD);
      default -> outcome.missing().contains(column);
    };
  }

  /** Whether no other open reading keeps the job from being held and checked. */
  private static boolean isAlone(JobOutcome outcome, OpenReading reading) {
    boolean others =
        !outcome.isHeld()
            && outcome.openReadings().stream().anyMatch(other -> !other.equals(reading));
    return !others && outcome.unchecked().size() <= 1;
  }

  /** The change for the least demanding vise; vises with no other blank are considered first. */
  private Optional<Question.Change> change(
      Job job, List<JobOutcome> outcomes, OpenReading reading) {
    Column column = reading.column();
    List<JobOutcome> open =
        outcomes.stream()
            .filter(outcome -> hangsOn(outcome, column))
            .sorted(Comparator.comparing(outcome -> !isAlone(outcome, reading)))
            .toList();
    if (BlankGaps.isGap(column)) {
      return Optional.of(ofGap(job, open, reading));
    }
    if (column == Column.NOSE_MAX && !job.toolLength().isBlank()) {
      long least =
          open.stream()
              .mapToLong(outcome -> outcome.partHeights().hi() + overPart(job))
              .min()
              .getAsLong();
      boolean alone =
          open.stream()
              .filter(outcome -> outcome.partHeights().hi() + overPart(job) == least)
              .anyMatch(outcome -> isAlone(outcome, reading));
      return Optional.of(atLeast(job, alone, values(reading), least));
    }
    if (column == Column.MAX_LOAD) {
      return open.stream()
          .filter(outcome -> weight(outcome).isPresent())
          .min(Comparator.comparing(outcome -> weight(outcome).get()))
          .map(
              outcome ->
                  new Question.Change(
                      job.name(),
                      true,
                      isAlone(outcome, reading),
                      Relation.AT_LEAST,
                      OptionalLong.empty(),
                      OptionalLong.empty(),
                      weight(outcome)));
    }
    return Optional.empty();
  }

  /** The values that an open reading may have, none beyond the largest length of a table. */
  private static Interval values(OpenReading reading) {
    Interval all = reading.value().values(-Length.ENDLESS);
    return Interval.of(Math.max(-Length.LARGEST, all.lo()), Math.min(Length.LARGEST, all.hi()));
  }

  private static Question.Change atLeast(Job job, boolean alone, Interval values, long least) {
    Relation relation =
        least <= values.lo()
            ? Relation.ALWAYS
            : least <= values.hi() ? Relation.AT_LEAST : Relation.NEVER;
    return new Question.Change(
        job.name(),
        true,
        alone,
        relation,
        relation == Relation.AT_LEAST ? OptionalLong.of(least) : OptionalLong.empty(),
        OptionalLong.empty(),
        Optional.empty());
  }

  /** Found by bisection, with every other open reading at its best. */
  private Question.Change ofGap(Job job, List<JobOutcome> open, OpenReading reading) {
    LongPredicate serves =
        gap -> {
          Machine filled = BlankGaps.at(machine, reading, gap);
          return open.stream().anyMatch(outcome -> mayHold(filled, outcome));
        };
    Interval values = values(reading);
    OptionalLong found = MonotoneSearch.from(values.lo(), values.hi(), serves);
    long least = serves.test(values.lo()) ? values.lo() : found.orElse(Long.MAX_VALUE);
    return atLeast(job, isAlone(open.get(0), reading), values, least);
  }

  private boolean mayHold(Machine filled, JobOutcome outcome) {
    return JobPairing.solve(settings, filled, outcome.vise(), outcome.job()).verdict()
        != JobVerdict.NOT_HELD;
  }

  /** Of a tool known within bounds the shortest. */
  private long overPart(Job job) {
    return job.toolLength().values(0).lo() + settings.clearance();
  }

  /** A part of blank mass counts as a solid block of steel. */
  private static Optional<BigDecimal> weight(JobOutcome outcome) {
    BigDecimal part = outcome.job().mass().orElseGet(() -> JobPart.steelMass(outcome.job()));
    return outcome.vise().mass().map(part::add);
  }
}
