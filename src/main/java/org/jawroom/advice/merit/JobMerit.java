package org.jawroom.advice.merit;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jawroom.placement.job.JobOutcome;
import org.jawroom.placement.search.Recommendation;
import org.jawroom.shop.Settings;

/**
 * What decides which of several vises, or machines, is the best to hold one job: nothing unchecked;
 * something listed that could be hit; bolted before clamped; settable before not; comfortable
 * before not; the widest jaw; the largest margin; of equals the first.
 */
public final class JobMerit {
  private JobMerit() {}

  /** The best of the outcomes that are held; empty if none is. */
  public static Optional<JobOutcome> best(Settings settings, List<JobOutcome> outcomes) {
    Comparator<JobOutcome> order = order(settings);
    return outcomes.stream()
        .filter(JobOutcome::isHeld)
        .reduce((best, next) -> order.compare(next, best) > 0 ? next : best);
  }

  /** How many pieces a pairing holds: the quantities of the jobs held, added up. */
  public static long pieces(List<JobOutcome> ofPairing) {
    long pieces = 0;
    for (JobOutcome outcome : ofPairing) {
      pieces += outcome.isHeld() ? outcome.job().quantity() : 0;
    }
    return pieces;
  }

  /** The better is the greater. */
  private static Comparator<JobOutcome> order(Settings settings) {
    return Comparator.comparing((JobOutcome held) -> held.unchecked().isEmpty())
        .thenComparing(held -> held.margin().isPresent())
        .thenComparing(held -> !place(held).fastening().clamped())
        .thenComparing(held -> place(held).settable())
        .thenComparing(held -> held.margin().orElse(Long.MIN_VALUE) >= settings.comfort())
        .thenComparingLong(held -> held.vise().jaws().width())
        .thenComparingLong(held -> held.margin().orElse(0));
  }

  private static Recommendation place(JobOutcome held) {
    return held.place().orElseThrow();
  }
}
