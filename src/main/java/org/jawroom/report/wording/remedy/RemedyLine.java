package org.jawroom.report.wording.remedy;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jawroom.advice.Advice;
import org.jawroom.advice.remedy.Remedy;
import org.jawroom.advice.remedy.RemedyKind;
import org.jawroom.clearance.gap.Limit;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.placement.search.Recommendation;
import org.jawroom.report.format.SheetNames;

/**
 * One remedy for a pairing, or the statement that there is none.
 *
 * @param words what to change
 * @param verdict after the change; empty if nothing is changed
 * @param then what limits the pairing after the change; empty if nothing does or nothing is changed
 * @param mind what to watch for when changing it; may be empty
 * @param apart whether the line must not be read as a remedy like the others
 */
public record RemedyLine(
    String words, Optional<Verdict> verdict, Optional<Limit> then, String mind, boolean apart) {

  private static final String NONE = "no single change does it";

  /**
   * Returns the lines of a pairing that neither fits nor is unknown: at least one, in order of
   * effort.
   */
  public static List<RemedyLine> of(Advice pairing, RemedyWords words) {
    Outcome outcome = pairing.outcome();
    List<RemedyLine> lines = new ArrayList<>();
    if (outcome.verdict() == Verdict.LIMITED
        || outcome.verdict() == Verdict.MEASURE && outcome.usableOpening().isPresent()) {
      lines.add(
          new RemedyLine(
              words.keepOpen(outcome),
              Optional.of(Verdict.LIMITED),
              outcome.verdict() == Verdict.LIMITED
                  ? outcome.recommended().flatMap(Recommendation::limit)
                  : Optional.empty(),
              "no change: it counts only while the jaws stay there",
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
                        Optional.empty(),
                        "see " + SheetNames.TO_MEASURE,
                        false)));
    if (pairing.remedies().stream().allMatch(RemedyLine::isLess)) {
      lines.add(new RemedyLine(NONE, Optional.empty(), Optional.empty(), "", false));
    }
    for (Remedy remedy : pairing.remediesForPeople()) {
      lines.add(
          new RemedyLine(
              words.change(outcome.machine(), remedy),
              Optional.of(remedy.then()),
              remedy.place().limit(),
              words.mind(outcome, remedy),
              isLess(remedy)));
    }
    return lines;
  }

  /** Whether remedies are listed for the pairing at all. */
  public static boolean isAbout(Outcome outcome) {
    return outcome.verdict() != Verdict.FITS && outcome.verdict() != Verdict.UNKNOWN;
  }

  private static boolean isLess(Remedy remedy) {
    return remedy.kind() == RemedyKind.CLEARANCE;
  }
}
