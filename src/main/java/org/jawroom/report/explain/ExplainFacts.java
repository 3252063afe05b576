package org.jawroom.report.explain;

import java.util.List;
import org.jawroom.advice.Explanation;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.shop.Settings;

/**
 * What the text on one pairing is made from.
 *
 * @param unit the unit that people read
 * @param onMachine the outcomes of every vise on the machine, the best first; may be empty for a
 *     pairing that fits
 * @param ofVise the outcomes of the vise on every machine, likewise
 * @param warnings one line for each warning about the machine or the vise
 */
public record ExplainFacts(
    PeopleUnit unit,
    Settings settings,
    Explanation explanation,
    List<Outcome> onMachine,
    List<Outcome> ofVise,
    List<String> warnings) {
  public ExplainFacts {
    onMachine = List.copyOf(onMachine);
    ofVise = List.copyOf(ofVise);
    warnings = List.copyOf(warnings);
  }

  Outcome outcome() {
    return explanation.advice().outcome();
  }
}
