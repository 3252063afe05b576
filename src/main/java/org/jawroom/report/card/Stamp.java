package org.jawroom.report.card;

import org.jawroom.placement.Outcome;

/** What stands over a card. */
enum Stamp {
  FITS("Fits"),
  NOTHING_LISTED("Nothing listed to hit"),
  LIMITED("Limited opening"),
  MEASURE("Measure first");

  private final String words;

  Stamp(String words) {
    this.words = words;
  }

  String words() {
    return words;
  }

  /** Of an outcome that {@link CardFacts#isPossible has a card}. */
  static Stamp of(Outcome outcome) {
    return switch (outcome.verdict()) {
      case FITS -> outcome.bestMargin().isPresent() ? FITS : NOTHING_LISTED;
      case LIMITED -> LIMITED;
      case MEASURE -> MEASURE;
      case NO_PLACE, NO_MOUNT, UNKNOWN ->
          throw new IllegalArgumentException("no card for " + outcome.verdict());
    };
  }
}
