package org.jawroom.report.wording;

import org.jawroom.placement.job.JobOutcome;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.pairing.Verdict;

/**
 * A verdict as people see it: its one word, a sign of its own, and what it means. A {@code fits}
 * with caveats has another sign and colour than a plain one. Each sign is a character that nearly
 * every font has, so that no verdict depends on its colour.
 */
public enum Finding {
  FITS(
      Verdict.FITS,
      "●",
      "",
      "nothing listed is hit, jaws closed to fully open (bare vise, no tool or part)"),
  FITS_BUT(
      Verdict.FITS,
      "○",
      ", with a caveat",
      "nothing listed is hit, but mind what stands beside it"),
  AWKWARD(
      Verdict.AWKWARD,
      "◐",
      "",
      "nothing is hit, but the handle has less room round it than a hand wants"),
  MEASURE(
      Verdict.MEASURE, "≈", "", "fits only if the readings are better than stated: measure again"),
  LIMITED(Verdict.LIMITED, "↔", "", "fits only while the jaws stay within the opening shown"),
  NO_PLACE(
      Verdict.NO_PLACE,
      "×",
      "",
      "can be held on this table, but hits something wherever it stands"),
  NO_MOUNT(
      Verdict.NO_MOUNT, "≠", "", "neither bolts nor clamps hold it in any orientation allowed"),
  UNKNOWN(
      Verdict.UNKNOWN, "?", "", "a reading that decides it is blank or known only within bounds");

  private final Verdict verdict;
  private final String sign;
  private final String more;
  private final String meaning;

  Finding(Verdict verdict, String sign, String more, String meaning) {
    this.verdict = verdict;
    this.sign = sign;
    this.more = more;
    this.meaning = meaning;
  }

  public static Finding of(Outcome outcome) {
    return of(outcome.verdict(), outcome.isPlainFit());
  }

  /** {@code plain}: whether a {@code fits} has no caveat. */
  public static Finding of(Verdict verdict, boolean plain) {
    return switch (verdict) {
      case FITS -> plain ? FITS : FITS_BUT;
      case AWKWARD -> AWKWARD;
      case LIMITED -> LIMITED;
      case MEASURE -> MEASURE;
      case NO_PLACE -> NO_PLACE;
      case NO_MOUNT -> NO_MOUNT;
      case UNKNOWN -> UNKNOWN;
    };
  }

  /**
   * Of a job that is held: plain only if something can be hit, all is checked, and no doubt is
   * left.
   */
  public static Finding ofHeld(JobOutcome held) {
    boolean isPlain =
        held.margin().isPresent() && held.unchecked().isEmpty() && held.inDoubt().isEmpty();
    return of(Verdict.FITS, isPlain);
  }

  /** Whether there is a place in which the vise may stand, perhaps after measuring again. */
  static boolean hasPlace(Outcome outcome) {
    Verdict verdict = outcome.verdict();
    return verdict.isClear() || verdict == Verdict.LIMITED || verdict == Verdict.MEASURE;
  }

  public String sign() {
    return sign;
  }

  /** The word of the verdict, the same for people and programs. */
  public String word() {
    return verdict.code();
  }

  /** The word, and whether there is a caveat; for a heading. */
  public String brief() {
    return verdict.code() + more;
  }

  /** The word and what it means, for a legend. */
  public String words() {
    return brief() + ": " + meaning;
  }

  /** What it means. */
  public String meaning() {
    return meaning;
  }
}
