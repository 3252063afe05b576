package org.jawroom.report.explain.json;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jawroom.placement.search.Recommendation;
import org.jawroom.placement.set.SetOutcome;
import org.jawroom.report.format.JsonText;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.format.Rounding;
import org.jawroom.report.set.SetWords;
import org.jawroom.report.wording.LookedFor;
import org.jawroom.report.wording.place.TapeWords;
import org.jawroom.shop.Settings;
import org.jawroom.shop.vise.Vise;

/**
 * A set on one machine for programs: a JSON object (RFC 8259), keys always in the same order,
 * lengths in mm to 0.001 rounded toward less clearance, {@code null} where something does not
 * apply.
 */
public final class SetExplanationJson {
  private SetExplanationJson() {}

  /** Returns the text, with a line end after the last line. */
  public static String of(Settings settings, SetOutcome outcome) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("set", outcome.set().name());
    json.put("machine", outcome.machine().name());
    json.put("fits", word(outcome.fits()));
    json.put("least_mm", ExplanationJson.length(outcome.least(), Rounding.DOWN));
    json.put("vises", outcome.stands().stream().map(stand -> stand(outcome, stand)).toList());
    json.put(
        "limited_by", outcome.hindrances().stream().map(SetExplanationJson::hindrance).toList());
    json.put("mind", new SetWords(PeopleUnit.MM, settings).minds(outcome));
    json.put("not_looked_for", LookedFor.not(outcome.machine()));
    json.put("caution", ExplanationJson.CAUTION);
    return JsonText.of(json);
  }

  private static Map<String, Object> stand(SetOutcome outcome, SetOutcome.Stand stand) {
    Recommendation place = stand.place();
    long spare = outcome.least().orElse(Long.MAX_VALUE);
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("vise", stand.vise().name());
    json.put("handle_to", place.handleTo().word());
    json.put("mount", place.mount());
    json.put("x_mm", ExplanationJson.length(place.x(), Rounding.NEAREST));
    json.put("y_mm", ExplanationJson.length(place.y(), Rounding.NEAREST));
    json.put("margin_mm", ExplanationJson.length(place.margin(), Rounding.DOWN));
    json.put("to_next_mm", ExplanationJson.length(stand.nextGap(), Rounding.DOWN));
    json.put("settable", place.settable());
    json.put("reach_shortfall_mm", ExplanationJson.length(place.reachShortfall(), Rounding.UP));
    json.put(
        "lay_out", new TapeWords(PeopleUnit.MM, outcome.machine(), stand.vise()).of(place, spare));
    return json;
  }

  private static Map<String, Object> hindrance(SetOutcome.Hindrance hindrance) {
    List<String> vises = hindrance.vises().stream().map(Vise::name).toList();
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("reason", word(hindrance.kind()).replace('_', ' '));
    json.put("vises", vises);
    return json;
  }

  private static String word(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT);
  }
}
