package org.jawroom.report.explain.json;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.OptionalLong;
import org.jawroom.clearance.gap.Limit;
import org.jawroom.placement.job.JobExplanation;
import org.jawroom.placement.job.JobOutcome;
import org.jawroom.placement.job.Shortfall;
import org.jawroom.placement.job.Unchecked;
import org.jawroom.placement.search.Recommendation;
import org.jawroom.report.format.Figures;
import org.jawroom.report.format.JsonText;
import org.jawroom.report.format.JsonText.Figure;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.format.Rounding;
import org.jawroom.report.format.ThreadWords;
import org.jawroom.report.wording.LookedFor;
import org.jawroom.report.wording.place.TapeWords;
import org.jawroom.report.wording.place.WhereWords;
import org.jawroom.shop.value.Column;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.value.Measurand;

/**
 * The explanation of a job on one pairing for programs: a JSON object (RFC 8259), keys always in
 * the same order, lengths in mm to 0.001 and masses in kg rounded as in {@code jobs.csv}, {@code
 * null} where something does not apply.
 */
public final class JobExplanationJson {
  private final JobExplanation explanation;
  private final JobOutcome outcome;

  private JobExplanationJson(JobExplanation explanation) {
    this.explanation = explanation;
    this.outcome = explanation.outcome();
  }

  /** Returns the text, with a line end after the last line. */
  public static String of(JobExplanation explanation) {
    return JsonText.of(new JobExplanationJson(explanation).whole());
  }

  private Map<String, Object> whole() {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("job", outcome.job().name());
    json.put("machine", outcome.machine().name());
    json.put("vise", outcome.vise().name());
    json.put("verdict", outcome.verdict().code());
    json.put("margin_mm", ExplanationJson.length(outcome.margin(), Rounding.DOWN));
    json.put(
        "shortfalls", outcome.shortfalls().stream().map(JobExplanationJson::shortfall).toList());
    json.put("missing", outcome.missing().stream().map(Column::path).toList());
    json.put("open", outcome.openReadings().stream().map(ExplanationJson::open).toList());
    json.put("unchecked", outcome.unchecked().stream().map(Unchecked::code).toList());
    json.put("in_doubt", outcome.inDoubt().stream().map(Measurand::path).toList());
    json.put("place", outcome.place().map(this::place).orElse(null));
    json.put(
        "part_underside_mm", ExplanationJson.length(outcome.partHeights().lo(), Rounding.DOWN));
    json.put("part_top_mm", ExplanationJson.length(outcome.partHeights().hi(), Rounding.UP));
    json.put("nose_max_mm", length(outcome.machine().noseMax(), Rounding.DOWN));
    json.put("tool_length_mm", length(outcome.job().toolLength(), Rounding.UP));
    json.put("tool_room_mm", ExplanationJson.length(outcome.toolRoom(), Rounding.DOWN));
    json.put(
        "shortest_stick_out_mm", ExplanationJson.length(outcome.shortestStickOut(), Rounding.UP));
    json.put(
        "load_room_kg", outcome.loadRoom().map(Figures::kilograms).map(Figure::new).orElse(null));
    json.put("pairs", explanation.pairs().stream().map(this::pair).toList());
    json.put("not_looked_for", LookedFor.not(outcome.machine()));
    json.put("caution", ExplanationJson.CAUTION);
    return json;
  }

  private static Map<String, Object> shortfall(Shortfall shortfall) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("reason", shortfall.reason().code());
    json.put("short_by_mm", ExplanationJson.length(shortfall.by(), Rounding.UP));
    json.put(
        "short_by_kg",
        shortfall.kilograms().map(Figures::kilogramsUp).map(Figure::new).orElse(null));
    return json;
  }

  private Map<String, Object> place(Recommendation place) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("handle_to", place.handleTo().word());
    json.put("x_mm", ExplanationJson.length(place.x(), Rounding.NEAREST));
    json.put("y_mm", ExplanationJson.length(place.y(), Rounding.NEAREST));
    json.put("mount", place.mount());
    json.put("bolt_thread", place.thread().isPresent() ? ThreadWords.of(place.thread()) : null);
    json.put("slots", place.slots().stream().map(slot -> new Figure(slot.toString())).toList());
    json.put("settable", place.settable());
    json.put("openings_from_mm", ExplanationJson.length(place.openings().lo(), Rounding.UP));
    json.put("openings_to_mm", ExplanationJson.length(place.openings().hi(), Rounding.DOWN));
    json.put("reach_shortfall_mm", ExplanationJson.length(place.reachShortfall(), Rounding.UP));
    json.put("nose_not_below_mm", ExplanationJson.length(place.noseNotBelow(), Rounding.UP));
    json.put("lay_out", new TapeWords(PeopleUnit.MM, outcome.machine(), outcome.vise()).of(place));
    return json;
  }

  private Map<String, Object> pair(Limit limit) {
    Map<String, Object> json = ExplanationJson.limit(limit);
    WhereWords where = new WhereWords(PeopleUnit.MM, outcome.machine(), outcome.vise());
    json.put("where", where.of(limit, outcome.place().orElseThrow().openings()));
    return json;
  }

  private static Figure length(Dimension dimension, Rounding rounding) {
    return ExplanationJson.length(
        dimension.isKnown() ? OptionalLong.of(dimension.length()) : OptionalLong.empty(), rounding);
  }
}
