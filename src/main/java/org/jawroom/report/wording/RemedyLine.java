package org.jawroom.report.wording;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jawroom.advice.Advice;
import org.jawroom.advice.Remedy;
import org.jawroom.advice.RemedyKind;
import org.jawroom.clearance.Limit;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.placement.search.Recommendation;
import org.jawroom.report.format.SheetNames;

/**
 * One thing that can be done about a pairing, or that nothing can.
 *
 * @param words what to change
 * @param then what limits it after that; empty where nothing does, and where nothing is changed
 * @param mind what to mind about it; may be empty
 * @param apart whether it must not be taken for a cure like the others
 */
public record RemedyLine(String words, Optional<Limit> then, String mind, boolean apart) {

  private static final String NONE = "no single change does it";

  /** Of a pairing that neither fits nor is unknown: one line at least, in the order of effort. */
  public static List<RemedyLine> of(Advice pairing, RemedyWords words) {
    Outcome outcome = pairing.outcome();
    List<RemedyLine> lines = new ArrayList<>();
    if (outcome.verdict() == Verdict.LIMITED) {
      lines.add(
          new RemedyLine(
              words.keepOpen(outcome),
              outcome.recommended().flatMap(Recommendation::limit),
              "no change: it holds only while the jaws stay there",
              false));
    }
    pairing
        .toleranceNeeded()
        .map(words::known)
        .filter(known -> !known.isEmpty())
        .ifPresent(
            known ->
                lines.add(
                    new RemedyLine(
                        "measure more closely: " + known,
                        Optional.empty(),
                        "see " + SheetNames.TO_MEASURE,
                        false)));
    if (pairing.remedies().stream().allMatch(RemedyLine::isLess)) {
      lines.add(new RemedyLine(NONE, Optional.empty(), "", false));
    }
    for (Remedy remedy : pairing.remedies()) {
      lines.add(
          new RemedyLine(
              words.change(outcome.machine(), remedy),
              remedy.then().limit(),
              words.mind(outcome, remedy),
              isLess(remedy)));
    }
    return lines;
  }

  /** Whether a pairing is to be listed at all. */
  public static boolean isAbout(Outcome outcome) {
    return outcome.verdict() != Verdict.FITS && outcome.verdict() != Verdict.UNKNOWN;
  }

  private static boolean isLess(Remedy remedy) {
    return remedy.kind() == RemedyKind.CLEARANCE;
  }
}
