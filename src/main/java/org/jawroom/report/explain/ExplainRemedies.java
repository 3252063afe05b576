package org.jawroom.report.explain;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.jawroom.advice.blank.BlankGaps;
import org.jawroom.advice.blank.BlankLimit;
import org.jawroom.advice.remedy.Remedy;
import org.jawroom.advice.remedy.RemedyKind;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.report.format.Rounding;
import org.jawroom.report.wording.OpenWords;
import org.jawroom.report.wording.remedy.Elsewhere;
import org.jawroom.report.wording.remedy.RemedyWords;
import org.jawroom.shop.value.Column;

/** The sections on what would make the vise fit, and what the shop has instead. */
record ExplainRemedies(ExplainFacts facts) {
  private static final int MOST_BLANKS = 4;

  /** Adds the sections; nothing for a pairing that fits. */
  void to(ExplainLines lines) {
    Outcome outcome = facts.outcome();
    if (outcome.verdict() == Verdict.FITS) {
      return;
    }
    if (outcome.verdict() == Verdict.UNKNOWN) {
      lines.heading(blanksHeading());
      blanks(outcome).forEach(lines::item);
    } else {
      lines.heading(changesHeading(outcome));
      without(outcome).forEach(lines::item);
      changes(outcome).forEach(lines::item);
    }
    lines.heading(insteadHeading());
    instead().forEach(lines::item);
    for (Remedy remedy : facts.explanation().advice().remedies()) {
      if (remedy.kind() == RemedyKind.CLEARANCE) {
        lines.heading("Or else, with less safety");
        lines.item(remedyWords(outcome, remedy));
      }
    }
  }

  /** Adds the best remedy, or the first limits of blanks; nothing for a pairing that fits. */
  void brief(ExplainLines lines) {
    Outcome outcome = facts.outcome();
    switch (outcome.verdict()) {
      case FITS -> {}
      case UNKNOWN -> {
        List<String> blanks = blanks(outcome);
        lines.briefHeading(blanksHeading());
        blanks.stream().limit(MOST_BLANKS).forEach(blank -> lines.item(blank, 1));
        if (blanks.size() > MOST_BLANKS) {
          lines.item("and " + (blanks.size() - MOST_BLANKS) + " more", 1);
        }
      }
      default -> {
        List<String> without = without(outcome);
        List<String> changes = changes(outcome);
        lines.briefHeading(
            changes.size() == 1
                ? changesHeading(outcome)
                : changesHeading(outcome) + " (the first of " + changes.size() + ")");
        without.forEach(line -> lines.item(line, 1));
        lines.item(changes.get(0), 3);
      }
    }
  }

  /** Adds what the shop has instead, a line each; nothing for a pairing that fits. */
  void briefInstead(ExplainLines lines) {
    if (facts.outcome().verdict() != Verdict.FITS) {
      lines.briefHeading(insteadHeading());
      instead().forEach(line -> lines.item(line, 1));
    }
  }

  private static String changesHeading(Outcome outcome) {
    return outcome.verdict() == Verdict.AWKWARD
        ? "What one change gives a hand its room, least effort first"
        : "What one change makes it fit, least effort first";
  }

  private String blanksHeading() {
    return "What the open readings would have to be (" + facts.unit().word() + ")";
  }

  private String insteadHeading() {
    return "What we have instead (margin, " + facts.unit().word() + ")";
  }

  private List<String> instead() {
    return List.of(
        "other vises of ours that fit here: " + Elsewhere.vises(facts.onMachine(), facts.unit()),
        "machines of ours where this vise fits: "
            + Elsewhere.machines(facts.ofVise(), facts.unit()));
  }

  /** What serves without any change. */
  private List<String> without(Outcome outcome) {
    RemedyWords words = new RemedyWords(facts.unit());
    List<String> without = new ArrayList<>();
    if (outcome.verdict() == Verdict.LIMITED) {
      without.add("without any change: " + words.keepOpen(outcome));
    }
    facts
        .explanation()
        .advice()
        .toleranceNeeded()
        .map(words::known)
        .filter(known -> !known.isEmpty())
        .ifPresent(known -> without.add("without any change: measure more closely, " + known));
    return without;
  }

  /** The single changes, the least effort first; at least one line. */
  private List<String> changes(Outcome outcome) {
    List<String> changes = new ArrayList<>();
    List<Remedy> remedies =
        facts.explanation().advice().remediesForPeople().stream()
            .filter(remedy -> remedy.kind() != RemedyKind.CLEARANCE)
            .toList();
    remedies.forEach(remedy -> changes.add(remedyWords(outcome, remedy)));
    if (remedies.isEmpty()) {
      changes.add("no single change does it");
    }
    return changes;
  }

  private String remedyWords(Outcome outcome, Remedy remedy) {
    RemedyWords words = new RemedyWords(facts.unit());
    String mind = words.mind(outcome, remedy);
    return words.change(outcome.machine(), remedy)
        + (mind.isEmpty() ? "" : " (" + mind + ")")
        + (remedy.then() == Verdict.AWKWARD ? "; then it is awkward" : "");
  }

  private List<String> blanks(Outcome outcome) {
    List<BlankLimit> limits = facts.explanation().advice().limits();
    List<String> blanks = new ArrayList<>();
    limits.forEach(limit -> blanks.add(limit(outcome, limit)));
    List<Column> others =
        outcome.missing().stream()
            .filter(
                column -> limits.stream().noneMatch(limit -> limit.reading().column() == column))
            .toList();
    if (!others.isEmpty()) {
      blanks.add(
          "measure these; no limit can be computed for them: "
              + others.stream().map(Column::path).collect(Collectors.joining(", ")));
    }
    return blanks;
  }

  private String limit(Outcome outcome, BlankLimit limit) {
    String column = OpenWords.column(limit.reading());
    // If other readings are open too, a limit is necessary but not sufficient.
    boolean alone = outcome.openReadings().size() == 1;
    String fits = alone ? "fits" : "can fit";
    String sure = alone ? "" : sure(limit);
    return switch (limit.relation()) {
      case AT_LEAST, AT_MOST ->
          !alone && limit.sure().equals(limit.limit())
              ? "fits if "
                  + column
                  + " "
                  + from(limit, limit.limit().getAsLong())
                  + ", whatever the others are"
              : fits + " if " + column + " " + from(limit, limit.limit().getAsLong()) + sure;
      case ALWAYS -> fits + " whatever " + column + " is" + sure;
      case NEVER -> "cannot fit whatever " + column + " is";
    };
  }

  /** {@code ; fits for certain if ≥ 45}: with all other open readings at worst. */
  private String sure(BlankLimit limit) {
    return limit.sure().isPresent()
        ? "; fits for certain if " + from(limit, limit.sure().getAsLong())
        : "";
  }

  private String from(BlankLimit limit, long value) {
    return BlankGaps.isGap(limit.reading().column())
        ? "≥ " + facts.unit().fine(value, Rounding.UP)
        : "≤ " + facts.unit().fine(value, Rounding.DOWN);
  }
}
