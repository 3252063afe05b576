package org.jawroom.report.explain;

import java.util.List;
import java.util.stream.Collectors;
import org.jawroom.advice.BlankLimit;
import org.jawroom.advice.Explanation;
import org.jawroom.advice.Remedy;
import org.jawroom.advice.RemedyKind;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.format.Rounding;
import org.jawroom.report.wording.Elsewhere;
import org.jawroom.report.wording.RemedyWords;
import org.jawroom.shop.Column;

/** The sections on what would make the vise fit, and what the shop has instead. */
record ExplainRemedies(PeopleUnit unit, Explanation explanation) {

  /**
   * Adds the sections; nothing for a pairing that fits.
   *
   * @param onMachine the outcomes of every vise on the machine
   * @param ofVise the outcomes of the vise on every machine
   */
  void to(ExplainLines lines, List<Outcome> onMachine, List<Outcome> ofVise) {
    Outcome outcome = explanation.advice().outcome();
    if (outcome.verdict() == Verdict.FITS) {
      return;
    }
    if (outcome.verdict() == Verdict.UNKNOWN) {
      blanks(outcome, lines);
    } else {
      changes(outcome, lines);
    }
    lines.heading("What we have instead (best margin, " + unit.word() + ")");
    lines.item("other vises of ours that fit here: " + Elsewhere.vises(onMachine, unit));
    lines.item("machines of ours where this vise fits: " + Elsewhere.machines(ofVise, unit));
    for (Remedy remedy : explanation.advice().remedies()) {
      if (remedy.kind() == RemedyKind.CLEARANCE) {
        lines.heading("Or else, with less safety");
        lines.item(remedyWords(outcome, remedy));
      }
    }
  }

  private void changes(Outcome outcome, ExplainLines lines) {
    RemedyWords words = new RemedyWords(unit);
    lines.heading("What one change would make it fit, least effort first");
    if (outcome.verdict() == Verdict.LIMITED) {
      lines.item("without any change: " + words.keepOpen(outcome));
    }
    explanation
        .advice()
        .toleranceNeeded()
        .map(words::known)
        .filter(known -> !known.isEmpty())
        .ifPresent(known -> lines.item("without any change: measure more closely, " + known));
    List<Remedy> remedies =
        explanation.advice().remedies().stream()
            .filter(one -> one.kind() != RemedyKind.CLEARANCE)
            .toList();
    remedies.forEach(remedy -> lines.item(remedyWords(outcome, remedy)));
    if (remedies.isEmpty()) {
      lines.item("no single change does it");
    }
  }

  private String remedyWords(Outcome outcome, Remedy remedy) {
    RemedyWords words = new RemedyWords(unit);
    String mind = words.mind(outcome, remedy);
    return words.change(outcome.machine(), remedy) + (mind.isEmpty() ? "" : " (" + mind + ")");
  }

  private void blanks(Outcome outcome, ExplainLines lines) {
    List<BlankLimit> limits = explanation.advice().limits();
    lines.heading("What the blanks would have to be (" + unit.word() + ")");
    limits.forEach(limit -> lines.item(limit(outcome, limit)));
    List<Column> others =
        outcome.missing().stream()
            .filter(column -> limits.stream().noneMatch(limit -> limit.column() == column))
            .toList();
    if (!others.isEmpty()) {
      lines.item(
          "no limit can be told for: "
              + others.stream().map(Column::path).collect(Collectors.joining(", ")));
    }
  }

  private String limit(Outcome outcome, BlankLimit limit) {
    String column = limit.guard().isEmpty() ? limit.column().column() : "gap of " + limit.guard();
    // If other blanks are open too, a limit is necessary but not sufficient.
    String fits = outcome.missing().size() == 1 ? "fits" : "can fit";
    return switch (limit.relation()) {
      case AT_LEAST ->
          fits + " if " + column + " ≥ " + unit.fine(limit.limit().getAsLong(), Rounding.UP);
      case AT_MOST ->
          fits + " if " + column + " ≤ " + unit.fine(limit.limit().getAsLong(), Rounding.DOWN);
      case ALWAYS -> fits + " whatever " + column + " is";
      case NEVER -> "cannot fit whatever " + column + " is";
    };
  }
}
