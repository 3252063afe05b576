package org.jawroom.placement.pairing;

/** What is said of a pairing; see the table of verdicts in README.md. */
public enum Verdict {
  /** Best margin ≥ 0 over the full opening range. */
  FITS("fits"),
  /** Best margin &lt; 0, but ≥ 0 with every tolerance taken as 0. */
  MEASURE("measure"),
  /** Margin ≥ 0 over part of the opening range, wide enough to be of use. */
  LIMITED("limited"),
  /** Bolts line up, but every position hits something. */
  NO_PLACE("no place"),
  /** No bolts of it line up with this table's slots in any turn allowed. */
  NO_MOUNT("no mount"),
  /** A dimension that decides it is blank. */
  UNKNOWN("unknown");

  private final String code;

  Verdict(String code) {
    this.code = code;
  }

  /** The code that {@code pairings.csv} bears. */
  public String code() {
    return code;
  }
}
