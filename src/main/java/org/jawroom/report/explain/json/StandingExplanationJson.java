package org.jawroom.report.explain.json;

import java.util.LinkedHashMap;
import java.util.Map;
import org.jawroom.placement.standing.StandingOutcome;
import org.jawroom.placement.standing.StandingOutcome.Move;
import org.jawroom.report.format.JsonText;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.format.Rounding;
import org.jawroom.report.standing.StandingWords;
import org.jawroom.report.wording.LookedFor;
import org.jawroom.shop.Standing;
import org.jawroom.shop.value.Column;

/**
 * A vise where it stands for programs: a JSON object (RFC 8259), keys always in the same order,
 * lengths in mm to 0.001 rounded toward less clearance, {@code null} where something does not
 * apply.
 */
public final class StandingExplanationJson {
  private StandingExplanationJson() {}

  /** Returns the text, with a line end after the last line. */
  public static String of(StandingOutcome outcome) {
    Standing standing = outcome.standing();
    StandingWords words = new StandingWords(PeopleUnit.MM);
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("machine", standing.machine().name());
    json.put("vise", standing.vise().name());
    json.put("handle_to", standing.place().handleTo().word());
    json.put("mount", standing.mount());
    json.put("x_mm", ExplanationJson.length(standing.x(), Rounding.NEAREST));
    json.put("y_mm", ExplanationJson.length(standing.y(), Rounding.NEAREST));
    json.put("says", outcome.says().word());
    json.put("margin_mm", ExplanationJson.length(outcome.margin(), Rounding.DOWN));
    json.put("limit", outcome.limit().map(ExplanationJson::limit).orElse(null));
    json.put(
        "usable_from_mm",
        outcome.usable().map(open -> ExplanationJson.length(open.lo(), Rounding.UP)).orElse(null));
    json.put(
        "usable_to_mm",
        outcome
            .usable()
            .map(open -> ExplanationJson.length(open.hi(), Rounding.DOWN))
            .orElse(null));
    json.put("reach_shortfall_mm", ExplanationJson.length(outcome.reachShortfall(), Rounding.UP));
    json.put("move", outcome.move().map(StandingExplanationJson::move).orElse(null));
    json.put("open", outcome.open().stream().map(Column::path).toList());
    json.put("lay_out", words.place(standing));
    json.put("mind", words.minds(outcome));
    json.put("not_looked_for", LookedFor.not(standing.machine()));
    json.put("caution", ExplanationJson.CAUTION);
    return JsonText.of(json);
  }

  private static Map<String, Object> move(Move move) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("x_mm", ExplanationJson.length(move.dx(), Rounding.NEAREST));
    json.put("y_mm", ExplanationJson.length(move.dy(), Rounding.NEAREST));
    json.put("turn_to", move.turnTo().word());
    return json;
  }
}
