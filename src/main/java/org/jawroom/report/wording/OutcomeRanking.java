package org.jawroom.report.wording;

import java.util.Collection;
import java.util.Comparator;
import java.util.Optional;
import org.jawroom.geometry.Interval;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.placement.search.Recommendation;

/**
 * Ranks pairings: clear before limited; then the spindle's reach least short; then the largest
 * margin (limited: the widest usable opening first); of equals the first. A pairing that is too
 * heavy, has no room over the jaws, or has no guard to check against is never the best.
 */
public final class OutcomeRanking {
  private static final Comparator<Outcome> BETTER_LAST =
      Comparator.comparing((Outcome outcome) -> outcome.verdict() == Verdict.FITS)
          .thenComparing(OutcomeRanking::reachShortfall, Comparator.reverseOrder())
          .thenComparing(OutcomeRanking::usable)
          .thenComparing(OutcomeRanking::margin);

  private OutcomeRanking() {}

  public static Optional<Outcome> best(Collection<Outcome> outcomes) {
    return outcomes.stream()
        .filter(OutcomeRanking::canBeBest)
        .reduce((first, next) -> isBetter(next, first) ? next : first);
  }

  /** Whether {@code next} ranks before {@code best}. Both must be eligible to be the best. */
  public static boolean isBetter(Outcome next, Outcome best) {
    return BETTER_LAST.compare(next, best) > 0;
  }

  public static boolean canBeBest(Outcome outcome) {
    return (outcome.verdict() == Verdict.FITS || outcome.verdict() == Verdict.LIMITED)
        && outcome.bestMargin().isPresent()
        && outcome.roomOverJaws().orElse(1) > 0
        && outcome.loadLeft().filter(left -> left.signum() < 0).isEmpty();
  }

  private static long reachShortfall(Outcome outcome) {
    return outcome.recommended().map(Recommendation::reachShortfall).orElse(0L);
  }

  /**
   * Zero for clear pairings: they are usable over their whole opening, so that it does not rank
   * them.
   */
  private static long usable(Outcome outcome) {
    return outcome.verdict() == Verdict.LIMITED
        ? outcome.usableOpening().map(Interval::length).orElse(0L)
        : 0;
  }

  private static long margin(Outcome outcome) {
    return outcome.margin().orElse(Long.MIN_VALUE);
  }
}
