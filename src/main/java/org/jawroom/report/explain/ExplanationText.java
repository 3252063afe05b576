package org.jawroom.report.explain;

import java.util.ArrayList;
import java.util.List;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.report.wording.Cautions;
import org.jawroom.report.wording.CaveatWords;
import org.jawroom.report.wording.LookedFor;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.vise.Vise;

/** The whole explanation of one pairing for a terminal. */
public final class ExplanationText {
  private ExplanationText() {}

  /**
   * Returns the lines, without line ends.
   *
   * @param columns the most characters in a line
   */
  public static List<String> lines(ExplainFacts facts, int columns) {
    ExplainLines lines = new ExplainLines(columns);
    Outcome outcome = facts.outcome();
    ExplainVerdict verdict = new ExplainVerdict(facts);
    lines.add(outcome.machine().name() + " x " + outcome.vise().name());
    lines.add(verdict.sentence());
    verdict.margin().ifPresent(lines::add);
    verdict.bounds().ifPresent(lines::add);
    verdict.cautions().forEach(caution -> lines.add("! " + caution));
    CaveatWords.checked(outcome).ifPresent(lines::add);
    new ExplainPlace(facts).to(lines);
    ExplainPairs.of(facts).to(lines);
    new ExplainChoices(facts).to(lines);
    new ExplainRemedies(facts).to(lines);
    if (!facts.warnings().isEmpty()) {
      lines.heading("What looks wrong in their rows");
      facts.warnings().forEach(lines::item);
    }
    lines.blank();
    cautions(outcome.machine(), outcome.vise()).forEach(lines::add);
    return lines.all();
  }

  /**
   * Which guards nobody looked for, which sizes count as exact, and that the report replaces no
   * check.
   */
  static List<String> cautions(Machine itsMachine, Vise itsVise) {
    List<String> not = LookedFor.not(itsMachine);
    boolean machine = itsMachine.provenance().assumedExact();
    boolean vise = itsVise.provenance().assumedExact();
    List<String> cautions = new ArrayList<>();
    if (!not.isEmpty()) {
      cautions.add(
          "Nobody looked for these on this machine, so they do not count: "
              + String.join(", ", not)
              + ".");
    }
    if (machine || vise) {
      cautions.add(
          "Tolerance taken as 0, since none is given, for the "
              + (machine && vise ? "machine and the vise" : machine ? "machine" : "vise")
              + ".");
    }
    cautions.add(Cautions.BRIEF);
    return cautions;
  }
}
