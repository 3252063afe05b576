package org.jawroom.report.card;

import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.pairing.Verdict;

/** The verdict at the head of a card. */
enum Stamp {
  FITS("Fits"),
  NOTHING_LISTED("Nothing listed to hit"),
  LIMITED("Limited opening"),
  MEASURE("Measure first"),
  /** Takes precedence over every clearance. */
  TOO_HEAVY("Too heavy");

  private final String words;

  Stamp(String words) {
    this.words = words;
  }

  String words() {
    return words;
  }

  /** Returns the stamp of an outcome that {@link CardFacts#isPossible has a card}. */
  static Stamp of(Outcome outcome) {
    if (!CardFacts.isPossible(outcome)) {
      throw new IllegalArgumentException("verdict has no setup card: " + outcome.verdict());
    }
    if (outcome.loadLeft().filter(left -> left.signum() < 0).isPresent()) {
      return TOO_HEAVY;
    }
    if (outcome.verdict().isClear()) {
      return outcome.bestMargin().isPresent() ? FITS : NOTHING_LISTED;
    }
    return outcome.verdict() == Verdict.LIMITED ? LIMITED : MEASURE;
  }
}
