package org.jawroom.report.tally;

import java.util.Optional;
import java.util.OptionalLong;
import org.jawroom.advice.Advice;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.report.wording.Finding;
import org.jawroom.report.wording.HeadlineMargin;
import org.jawroom.report.wording.OutcomeRanking;

/** Pairings counted one by one: how many come to what, which is the best, how margins range. */
public final class Tally {
  private final long[] counts = new long[Finding.values().length];
  private OptionalLong least = OptionalLong.empty();
  private OptionalLong greatest = OptionalLong.empty();
  private Advice best;
  private long bestIndex;
  private Advice most;
  private long total;
  private long clear;

  /** Counts in the pairing of that index. */
  void add(long index, Advice pairing) {
    Outcome outcome = pairing.outcome();
    total++;
    counts[Finding.of(outcome).ordinal()]++;
    if (outcome.bestMargin().isPresent()) {
      long margin = outcome.bestMargin().getAsLong();
      least = OptionalLong.of(Math.min(margin, least.orElse(margin)));
      greatest = OptionalLong.of(Math.max(margin, greatest.orElse(margin)));
    }
    if (HeadlineMargin.margin(outcome).orElse(-1) >= 0) {
      clear++;
    }
    if (OutcomeRanking.canBeBest(outcome)
        && (best == null || OutcomeRanking.isBetter(outcome, best.outcome()))) {
      best = pairing;
      bestIndex = index;
    }
    if (PerTable.count(pairing) > (most == null ? 0 : PerTable.count(most))) {
      most = pairing;
    }
  }

  public long count(Finding finding) {
    return counts[finding.ordinal()];
  }

  public long total() {
    return total;
  }

  /** How many are shown with a margin of 0 or more. */
  long clear() {
    return clear;
  }

  /** Of the best margins, half-nanometres; empty where no pairing has one. */
  public OptionalLong leastMargin() {
    return least;
  }

  /** Likewise. */
  public OptionalLong greatestMargin() {
    return greatest;
  }

  /** The best pairing ({@link OutcomeRanking}). */
  public Optional<Advice> best() {
    return Optional.ofNullable(best);
  }

  /** The index of {@link #best}, where there is one. */
  public long bestIndex() {
    return bestIndex;
  }

  /** The pairing of which the most stand on one table, the first of equals. */
  Optional<Advice> most() {
    return Optional.ofNullable(most);
  }
}
