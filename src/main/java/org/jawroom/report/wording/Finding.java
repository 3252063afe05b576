package org.jawroom.report.wording;

import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.placement.search.Recommendation;

/**
 * The findings that people see for a pairing: the verdicts and, separately, a {@code fits} for
 * which no guard was there to check against. Each sign is a character that nearly every font has,
 * so that no finding depends on its colour.
 */
public enum Finding {
  CLEAR("●", "clear", "clear (bare vise, no tool or part)"),
  NOTHING_LISTED("○", "nothing listed to hit", "nothing listed to hit: look before you trust it"),
  AWKWARD("◐", "awkward", "awkward: nothing is hit, but a hand has little room round the handle"),
  LIMITED("↔", "limited opening", "clear over part of the opening only"),
  MEASURE("≈", "too close: measure", "too close: measure"),
  NO_PLACE("×", "no place", "no place: hits something wherever it is bolted"),
  NO_MOUNT("≠", "bolts don't line up", "bolts don't line up"),
  UNKNOWN("?", "unknown", "unknown: not measured");

  private final String sign;
  private final String brief;
  private final String words;

  Finding(String sign, String brief, String words) {
    this.sign = sign;
    this.brief = brief;
    this.words = words;
  }

  public static Finding of(Outcome outcome) {
    return of(outcome.verdict(), outcome.bestMargin().isPresent());
  }

  /** {@code hasMargin}: whether there is a best margin; there is none if no guard was checked. */
  public static Finding of(Verdict verdict, boolean hasMargin) {
    return switch (verdict) {
      case FITS -> hasMargin ? CLEAR : NOTHING_LISTED;
      case AWKWARD -> AWKWARD;
      case LIMITED -> LIMITED;
      case MEASURE -> MEASURE;
      case NO_PLACE -> NO_PLACE;
      case NO_MOUNT -> NO_MOUNT;
      case UNKNOWN -> UNKNOWN;
    };
  }

  /** Whether there is a place in which the vise may stand, perhaps after measuring again. */
  static boolean hasPlace(Outcome outcome) {
    Verdict verdict = outcome.verdict();
    return verdict.isClear() || verdict == Verdict.LIMITED || verdict == Verdict.MEASURE;
  }

  /** Whether the recommended place trades margin for the spindle's reach. */
  static boolean placedForReach(Outcome outcome) {
    return outcome.verdict() == Verdict.FITS
        && outcome
            .recommended()
            .flatMap(Recommendation::limit)
            .filter(limit -> limit.margin() < outcome.bestMargin().orElse(limit.margin()))
            .isPresent();
  }

  public String sign() {
    return sign;
  }

  /** The short form, for a heading. */
  public String brief() {
    return brief;
  }

  /** The full form, without the sign. */
  public String words() {
    return words;
  }
}
