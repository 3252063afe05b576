package org.jawroom.report.wording;

import java.util.OptionalLong;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.placement.search.Recommendation;

/** Selects the margin that represents an outcome. */
public final class HeadlineMargin {
  private HeadlineMargin() {}

  /**
   * The best margin; for a limited pairing the margin of its place over the usable opening.
   * Half-nanometres; empty if there is none.
   */
  public static OptionalLong margin(Outcome outcome) {
    return outcome.verdict() == Verdict.LIMITED ? placed(outcome) : outcome.bestMargin();
  }

  /** The margin at the recommended place. */
  public static OptionalLong placed(Outcome outcome) {
    return outcome.recommended().flatMap(Recommendation::limit).stream()
        .mapToLong(limit -> limit.margin())
        .findFirst();
  }
}
