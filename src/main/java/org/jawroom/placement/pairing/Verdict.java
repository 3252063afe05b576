package org.jawroom.placement.pairing;

/** The verdict on a pairing; see the table of verdicts in README.md. */
public enum Verdict {
  /** Best margin ≥ 0 over the full opening range. */
  FITS("fits"),
  /** Best margin &lt; 0, but ≥ 0 with every tolerance taken as 0. */
  MEASURE("measure"),
  /** Margin ≥ 0 over part of the opening range, at least {@code least_opening} wide. */
  LIMITED("limited"),
  /** Bolts line up, but something is hit at every position. */
  NO_PLACE("no place"),
  /** No bolts of the vise line up with the table's slots in any turn allowed. */
  NO_MOUNT("no mount"),
  /** A column that decides it is blank. */
  UNKNOWN("unknown");

  private final String code;

  Verdict(String code) {
    this.code = code;
  }

  /** The code written to {@code pairings.csv}. */
  public String code() {
    return code;
  }
}
