package org.jawroom.report;

import java.util.OptionalLong;
import org.jawroom.placement.Outcome;
import org.jawroom.placement.Recommendation;
import org.jawroom.placement.Verdict;

/** Which of an outcome's margins stands for it. */
final class Shown {
  private Shown() {}

  /**
   * The best margin; of a limited pairing that of its place over the usable opening.
   * Half-nanometres; empty where there is none.
   */
  static OptionalLong margin(Outcome outcome) {
    return outcome.verdict() == Verdict.LIMITED ? placed(outcome) : outcome.bestMargin();
  }

  /** The margin in the recommended place. */
  static OptionalLong placed(Outcome outcome) {
    return outcome.recommended().flatMap(Recommendation::limit).stream()
        .mapToLong(limit -> limit.margin())
        .findFirst();
  }
}
