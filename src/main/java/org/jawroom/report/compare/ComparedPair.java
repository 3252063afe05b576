package org.jawroom.report.compare;

import java.util.Optional;
import java.util.OptionalLong;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.report.rows.PairingRow;

/**
 * One pairing in two runs.
 *
 * <p>Verdicts from best to worst: fits, awkward, limited, measure, unknown, no place, no mount. A
 * pairing that was {@code unknown} and no longer is counts as now known, neither better nor worse.
 * One that became {@code unknown} is worse if it had a place, else neither. A better verdict with
 * less of the best margin is neither: if more clearance is required, {@code measure} may become
 * {@code limited}. Only {@code fits} asks for hand room, so its margin may be the smaller one.
 *
 * <p>Under the same verdict the margin decides, then the usable opening (a range that contains the
 * other is the better), then whether the vise can be tapped square, then the best margin. For two
 * {@code limited} the best margin and the usable opening have equal weight, and only if neither
 * changed does the margin within the usable opening decide. A margin that only one run has cannot
 * be compared; nor can what a report of an earlier version does not have, which then counts as
 * unchanged.
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
    boolean lost = now.verdict() != Verdict.FITS && gained(old.bestMargin(), now.bestMargin()) < 0;
    boolean doubtful = now.verdict() == Verdict.UNKNOWN || lost;
    return change == Change.BETTER && doubtful ? Change.OTHERWISE : change;
  }

  private Change sameVerdict() {
    Change best = weighed(old.bestMargin(), now.bestMargin());
    Change margin = weighed(old.margin(), now.margin());
    Change order =
        now.verdict() == Verdict.LIMITED
            ? openings().and(best).orElse(margin)
            : margin.orElse(openings());
    return order.orElse(settable()).orElse(best);
  }

  private Change settable() {
    return old.settable().isPresent() && now.settable().isPresent()
        ? Change.from(old.settable().get() ? 1 : 0, now.settable().get() ? 1 : 0)
        : Change.UNCHANGED;
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

  /** The gain of the margin that decides; of the other one if that is unchanged. */
  private long marginGained() {
    long best = gained(old.bestMargin(), now.bestMargin());
    long margin = gained(old.margin(), now.margin());
    boolean limited = old.verdict() == Verdict.LIMITED && now.verdict() == Verdict.LIMITED;
    long first = limited ? best : margin;
    return first == 0 ? (limited ? margin : best) : first;
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
