package org.jawroom.report.card.statement;

import java.util.List;
import java.util.Optional;
import org.jawroom.clearance.gap.Limit;
import org.jawroom.placement.job.JobExplanation;
import org.jawroom.placement.job.JobOutcome;
import org.jawroom.placement.pairing.Inspection;
import org.jawroom.placement.pairing.Layout;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.pairing.Pairing;
import org.jawroom.placement.pairing.SolvedPairing;
import org.jawroom.placement.pairing.TapSquare;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.placement.search.Recommendation;
import org.jawroom.placement.search.Roomiest;
import org.jawroom.placement.space.Play;
import org.jawroom.shop.Settings;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.machine.Sides;
import org.jawroom.shop.vise.Vise;

/**
 * What a card shows: a pairing at its recommended place, or at the place of a job that it holds.
 *
 * @param outcome of the pairing
 * @param place that of the job, if there is one
 * @param pairs every pair there, in ascending order of margin
 * @param range how far the vise may stand from the place; empty if the margin is negative
 * @param roomiest the roomiest place, if it has more margin; empty for a job
 * @param reachShort empty for a job, since its part is within reach
 * @param warnings those of this machine and this vise
 */
public record CardSubject(
    Outcome outcome,
    Optional<JobOutcome> job,
    Recommendation place,
    List<Limit> pairs,
    Layout layout,
    Optional<Play> range,
    Optional<Roomiest> roomiest,
    Optional<Sides<Long>> reachShort,
    List<String> warnings) {
  public CardSubject {
    pairs = List.copyOf(pairs);
    warnings = List.copyOf(warnings);
  }

  /** Whether the outcome has a place, and so a card. */
  public static boolean isPossible(Outcome outcome) {
    Verdict verdict = outcome.verdict();
    return verdict.isClear() || verdict == Verdict.LIMITED || verdict == Verdict.MEASURE;
  }

  /** Empty unless the pairing {@link #isPossible has a card}. */
  public static Optional<CardSubject> of(
      Settings settings, Machine machine, Vise vise, List<String> warnings) {
    SolvedPairing solved = Pairing.solved(settings, machine, vise);
    return solved
        .inspection()
        .filter(closer -> isPossible(solved.outcome()))
        .map(closer -> of(solved.outcome(), closer, warnings));
  }

  private static CardSubject of(Outcome outcome, Inspection closer, List<String> warnings) {
    return new CardSubject(
        outcome,
        Optional.empty(),
        outcome.recommended().orElseThrow(),
        closer.pairs(),
        closer.layout(),
        closer.range(),
        closer.roomiest(),
        Optional.of(closer.reachShort()),
        warnings);
  }

  /**
   * The card of a job.
   *
   * @param outcome of the pairing that holds it
   * @throws IllegalArgumentException if the job is not held
   */
  public static CardSubject of(Outcome outcome, JobExplanation job, List<String> warnings) {
    if (!job.outcome().isHeld()) {
      throw new IllegalArgumentException("a job that is not held has no card");
    }
    return new CardSubject(
        outcome,
        Optional.of(job.outcome()),
        job.outcome().place().orElseThrow(),
        job.pairs(),
        job.layout().orElseThrow(),
        job.range(),
        Optional.empty(),
        Optional.empty(),
        warnings);
  }

  public Machine machine() {
    return outcome.machine();
  }

  Vise vise() {
    return outcome.vise();
  }

  TapSquare tap() {
    return TapSquare.of(vise(), place, layout, pairs);
  }

  /** The outcome with the place of the card, for a drawing. */
  public Outcome placed() {
    return new Outcome(
        outcome.machine(),
        outcome.vise(),
        outcome.verdict(),
        outcome.bestMargin(),
        Optional.of(place),
        outcome.usableOpening(),
        outcome.caveats(),
        outcome.roomOverJaws(),
        outcome.loadLeft(),
        outcome.shortestToolTooShort(),
        outcome.bounds(),
        outcome.open());
  }
}
