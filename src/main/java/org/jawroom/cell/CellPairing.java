package org.jawroom.cell;

import java.math.RoundingMode;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.jawroom.advice.merit.PairingMerit;
import org.jawroom.clearance.gap.Limit;
import org.jawroom.geometry.Interval;
import org.jawroom.placement.job.JobOutcome;
import org.jawroom.placement.job.JobPairing;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.pairing.Pairing;
import org.jawroom.placement.pairing.SolvedPairing;
import org.jawroom.placement.search.Recommendation;
import org.jawroom.placement.search.SideBySide;
import org.jawroom.shop.Job;
import org.jawroom.shop.Settings;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.vise.Vise;

/**
 * The facts that a plan needs of one pairing.
 *
 * @param sideBySide {@link SideBySide#NONE} if it does not fit
 * @param jobs one outcome per job of the cell, in its order
 */
public record CellPairing(Outcome outcome, SideBySide sideBySide, List<JobOutcome> jobs) {
  public CellPairing {
    jobs = List.copyOf(jobs);
  }

  /** Solves {@code vise} on {@code machine} with {@code jobs}; pure. */
  public static CellPairing solve(Settings settings, Machine machine, Vise vise, List<Job> jobs) {
    SolvedPairing solved = Pairing.solved(settings, machine, vise);
    return new CellPairing(
        solved.outcome(), solved.sideBySide(), JobPairing.solve(settings, machine, vise, jobs));
  }

  /** Whether a plan may choose it. */
  public boolean isChoice() {
    boolean tooHeavy = outcome.loadLeft().filter(left -> left.signum() < 0).isPresent();
    return !tooHeavy && (stands() || !held().isEmpty());
  }

  /** Whether it may stand in a row of several kinds, over its full opening. */
  boolean standsInRows() {
    return outcome.verdict().isClear() && stands();
  }

  /** Whether it stands there for its jobs only, each in its own place. */
  public boolean isForItsJobsOnly() {
    return !stands() && !held().isEmpty();
  }

  /** Whether it has a margin of at least {@code comfort}, in a settable place of its own. */
  boolean isGood(Settings settings) {
    return stands()
        && PairingMerit.isComfortable(settings, outcome)
        && outcome.recommended().orElseThrow().settable();
  }

  /** Width of the usable opening; 0 if it has none. */
  long usableOpening() {
    return outcome.usableOpening().map(Interval::length).orElse(0L);
  }

  public List<JobOutcome> held() {
    return jobs.stream().filter(JobOutcome::isHeld).toList();
  }

  /** The placement whose margin it reports; always present for a choice. */
  public Optional<Recommendation> place() {
    return isForItsJobsOnly()
        ? held().stream()
            .min(Comparator.comparingLong(job -> job.margin().orElse(Long.MAX_VALUE)))
            .flatMap(JobOutcome::place)
        : outcome.recommended();
  }

  /** Empty if nothing listed can be hit. */
  public OptionalLong margin() {
    return place().flatMap(Recommendation::limit).stream().mapToLong(Limit::margin).findFirst();
  }

  /** How many stand on the table within its load capacity, at least 1. */
  int most() {
    int stand = outcome.verdict().isClear() && stands() ? Math.max(1, sideBySide.count()) : 1;
    return outcome
        .machine()
        .maxLoad()
        .flatMap(
            load ->
                outcome
                    .vise()
                    .mass()
                    .filter(mass -> mass.signum() > 0)
                    .map(mass -> load.divide(mass, 0, RoundingMode.FLOOR).longValue()))
        .map(carried -> (int) Math.max(1, Math.min(stand, carried)))
        .orElse(stand);
  }

  private boolean stands() {
    return PairingMerit.stands(outcome);
  }
}
