package org.jawroom.report.compare;

import java.util.Optional;
import java.util.OptionalLong;
import org.jawroom.placement.pairing.Verdict;

/**
 * One pairing in two runs.
 *
 * <p>Verdicts from best to worst: fits, limited, measure, unknown, no place, no mount. What was
 * {@code unknown} and is no more is neither better nor worse, but now known. What can no longer be
 * told is worse if there was a place, else neither. A better verdict with less margin is neither:
 * where more clearance is asked for, {@code measure} may become {@code limited}.
 *
 * <p>Under the same verdict the best margin decides, then the usable opening: one that holds the
 * other is the better. For two {@code limited} these two weigh the same, and only where both stayed
 * does the margin within the usable opening decide. A margin told in only one of the two cannot be
 * weighed.
 */
record ComparedPair(PairingRow old, PairingRow now) {

  /**
   * What is gained in the verdict, in margin, in usable opening; what was lost is below 0. The
   * first in which two pairs differ says which lost more.
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

  /** Below 0: the verdict got worse by so many steps. */
  private int stepsGained() {
    return rank(old.verdict()) - rank(now.verdict());
  }

  /**
   * Of the best margin or, where that stayed, of the one within the usable opening of two limited.
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
      case LIMITED -> 1;
      case MEASURE -> 2;
      case UNKNOWN -> 3;
      case NO_PLACE -> 4;
      case NO_MOUNT -> 5;
    };
  }
}
