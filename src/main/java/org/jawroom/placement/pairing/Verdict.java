package org.jawroom.placement.pairing;

/** The verdict on a pairing, from the best to the worst; see the table of verdicts in README.md. */
public enum Verdict {
  /** Best margin with hand room ≥ 0 over the full opening range. */
  FITS("fits"),
  /** Not so, but best margin ≥ 0: the handle leaves less room than a hand wants. */
  AWKWARD("awkward"),
  /** Best margin &lt; 0, but ≥ 0 with every tolerance taken as 0. */
  MEASURE("measure"),
  /** Margin ≥ 0 over part of the opening range, at least {@code least_opening} wide. */
  LIMITED("limited"),
  /** The vise can be mounted, but something is hit at every position. */
  NO_PLACE("no place"),
  /** Neither bolts nor clamps hold the vise on the table in any turn allowed. */
  NO_MOUNT("no mount"),
  /** A column that decides it is blank. */
  UNKNOWN("unknown");

  private final String code;

  Verdict(String code) {
    this.code = code;
  }

  /** The word that people and programs read. */
  public String code() {
    return code;
  }

  /** Whether nothing is hit over the full opening range: {@code fits} or {@code awkward}. */
  public boolean isClear() {
    return this == FITS || this == AWKWARD;
  }
}
