package org.jawroom.report.explain;

import java.util.List;
import org.jawroom.advice.Explanation;
import org.jawroom.clearance.Limit;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.placement.search.Recommendation;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.format.Rounding;
import org.jawroom.report.wording.Cautions;
import org.jawroom.report.wording.LookedFor;
import org.jawroom.report.wording.Words;
import org.jawroom.shop.Machine;
import org.jawroom.shop.Vise;

/** The explanation of one pairing for a terminal of 80 columns. */
public final class ExplanationText {
  private final PeopleUnit unit;
  private final Outcome outcome;
  private final ExplainLines lines = new ExplainLines();

  private ExplanationText(PeopleUnit unit, Outcome outcome) {
    this.unit = unit;
    this.outcome = outcome;
  }

  /**
   * Returns the lines, without line ends. The alternatives in the house come from the two lists of
   * outcomes.
   *
   * @param onMachine the outcomes of every vise on the machine
   * @param ofVise the outcomes of the vise on every machine
   */
  public static List<String> lines(
      PeopleUnit unit, Explanation explanation, List<Outcome> onMachine, List<Outcome> ofVise) {
    ExplanationText text = new ExplanationText(unit, explanation.advice().outcome());
    text.verdict();
    new ExplainPlace(unit, explanation).to(text.lines);
    ExplainPairs.of(unit, explanation).to(text.lines);
    new ExplainChoices(unit, explanation).to(text.lines);
    new ExplainRemedies(unit, explanation).to(text.lines, onMachine, ofVise);
    text.cautions();
    return text.lines.all();
  }

  private void verdict() {
    lines.add(outcome.machine().name() + " x " + outcome.vise().name());
    lines.add(new Words(unit).sentence(outcome));
    outcome
        .recommended()
        .flatMap(Recommendation::limit)
        .ifPresent(limit -> lines.add("Margin at the place below" + over() + ": " + figure(limit)));
    outcome
        .bestMargin()
        .ifPresent(
            best ->
                lines.add(
                    "Best margin anywhere over the full opening: "
                        + unit.fine(best, Rounding.DOWN)
                        + " "
                        + unit.word()
                        + "."));
    new Words(unit).marks(outcome).forEach(mark -> lines.add("! " + mark));
  }

  private String over() {
    return outcome.verdict() == Verdict.LIMITED ? ", jaws within that opening" : "";
  }

  private String figure(Limit limit) {
    return unit.fine(limit.margin(), Rounding.DOWN)
        + " "
        + unit.word()
        + ", from "
        + limit.part().name()
        + " to "
        + limit.guard().name()
        + ".";
  }

  private void cautions() {
    cautions(outcome.machine(), outcome.vise(), lines);
  }

  /**
   * Adds which guards nobody looked for, which sizes count as exact, and that the report replaces
   * no check.
   */
  static void cautions(Machine itsMachine, Vise itsVise, ExplainLines lines) {
    lines.blank();
    List<String> not = LookedFor.not(itsMachine);
    if (!not.isEmpty()) {
      lines.add(
          "Nobody looked for these on this machine, so they do not count: "
              + String.join(", ", not)
              + ".");
    }
    boolean machine = itsMachine.provenance().assumedExact();
    boolean vise = itsVise.provenance().assumedExact();
    if (machine || vise) {
      lines.add(
          "Tolerance taken as 0, since none was told, for the "
              + (machine && vise ? "machine and the vise" : machine ? "machine" : "vise")
              + ".");
    }
    lines.add(Cautions.BRIEF);
  }
}
