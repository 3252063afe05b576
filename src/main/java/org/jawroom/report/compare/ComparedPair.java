package org.jawroom.report.compare;

import java.util.Optional;
import java.util.OptionalLong;
import org.jawroom.placement.pairing.Verdict;

/**
 * One pairing in two runs.
 *
 * <p>Verdicts from best to worst: fits, limited, measure, unknown, no place, no mount. A pairing
 * that was {@code unknown} and no longer is counts as now known, neither better nor worse. One that
 * became {@code unknown} is worse if it had a place, else neither. A better verdict with less
 * margin is neither: if more clearance is required, {@code measure} may become {@code limited}.
 *
 * <p>Under the same verdict the best margin decides, then the usable opening: a range that contains
 * the other is the better. For two {@code limited} these two have equal weight, and only if neither
 * changed does the margin within the usable opening decide. A margin that only one run has cannot
 * be compared.
 */
record ComparedPair(PairingRow old, PairingRow now) {

  /**
   * The gains in verdict, margin and usable opening; losses are negative. Pairs are ordered by them
   * lexicographically.
   */
  long[] gains() {
    return new long[] {stepsGained(), marginGained(), openingGained()};
  }

  Change change() {
    if (old.verdict() == now.verdict()) {
      return sameVerdict();
    }
    if (old.verdict() == Verdict.UNKNOWN) {
      return Change.NOW_KNOWN;
    }
    Change change = Change.from(0, stepsGained());
    boolean doubtful =
        now.verdict() == Verdict.UNKNOWN || gained(old.bestMargin(), now.bestMargin()) < 0;
    return change == Change.BETTER && doubtful ? Change.OTHERWISE : change;
  }

  private Change sameVerdict() {
    Change margin = weighed(old.bestMargin(), now.bestMargin());
    Change opening = openings();
    return now.verdict() == Verdict.LIMITED
        ? opening.and(margin).orElse(weighed(old.margin(), now.margin()))
        : margin.orElse(opening);
  }

  private static Change weighed(OptionalLong old, OptionalLong now) {
    if (old.isPresent() && now.isPresent()) {
      return Change.from(old.getAsLong(), now.getAsLong());
    }
    return old.equals(now) ? Change.UNCHANGED : Change.OTHERWISE;
  }

  private Change openings() {
    Optional<PairingRow.Usable> before = old.usable();
    Optional<PairingRow.Usable> after = now.usable();
    if (before.equals(after)) {
      return Change.UNCHANGED;
    }
    if (before.isEmpty() || after.isEmpty()) {
      return Change.OTHERWISE;
    }
    return after.get().holds(before.get())
        ? Change.BETTER
        : before.get().holds(after.get()) ? Change.WORSE : Change.OTHERWISE;
  }

  /** The number of ranks by which the verdict improved; negative if it got worse. */
  private int stepsGained() {
    return rank(old.verdict()) - rank(now.verdict());
  }

  /**
   * The gain of the best margin or, if that is unchanged and both are limited, of the margin within
   * the usable opening.
   */
  private long marginGained() {
    long best = gained(old.bestMargin(), now.bestMargin());
    boolean limited = old.verdict() == Verdict.LIMITED && now.verdict() == Verdict.LIMITED;
    return best == 0 && limited ? gained(old.margin(), now.margin()) : best;
  }

  private static long gained(OptionalLong old, OptionalLong now) {
    return old.isPresent() && now.isPresent() ? now.getAsLong() - old.getAsLong() : 0;
  }

  private long openingGained() {
    return old.usable().isPresent() && now.usable().isPresent()
        ? now.usable().get().width() - old.usable().get().width()
        : 0;
  }

  private static int rank(Verdict verdict) {
    return switch (verdict) {
      case FITS -> 0;
      case AWKWARD -> 1;
      case LIMITED -> 2;
      case MEASURE -> 3;
      case UNKNOWN -> 4;
      case NO_PLACE -> 5;
      case NO_MOUNT -> 6;
    };
  }
}
