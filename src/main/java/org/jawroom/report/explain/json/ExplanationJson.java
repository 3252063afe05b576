package org.jawroom.report.explain.json;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalLong;
import org.jawroom.advice.Advice;
import org.jawroom.advice.Explanation;
import org.jawroom.advice.ToleranceNeeded;
import org.jawroom.advice.blank.BlankLimit;
import org.jawroom.advice.remedy.Remedy;
import org.jawroom.clearance.gap.Limit;
import org.jawroom.geometry.Length;
import org.jawroom.geometry.Orientation;
import org.jawroom.placement.bolting.Miss;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.search.Alternative;
import org.jawroom.placement.search.Recommendation;
import org.jawroom.placement.search.Roomiest;
import org.jawroom.placement.search.SideBySide;
import org.jawroom.report.format.Figures;
import org.jawroom.report.format.JsonText;
import org.jawroom.report.format.JsonText.Figure;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.format.Rounding;
import org.jawroom.report.format.ThreadWords;
import org.jawroom.report.wording.LookedFor;
import org.jawroom.report.wording.place.TapeWords;
import org.jawroom.report.wording.place.WhereWords;
import org.jawroom.report.wording.remedy.Elsewhere;
import org.jawroom.shop.OpenReading;
import org.jawroom.shop.machine.Side;
import org.jawroom.shop.value.Column;
import org.jawroom.shop.value.Measurand;

/**
 * The explanation of one pairing for programs: a JSON object (RFC 8259), keys always in the same
 * order, lengths in mm to 0.001 rounded as in {@code pairings.csv}, {@code null} where something
 * does not apply.
 */
public final class ExplanationJson {
  static final String CAUTION =
      "does not replace the check on the machine; lock out before reaching in; local codes and the"
          + " machine maker's instructions come first";

  private final Explanation explanation;
  private final Outcome outcome;

  private ExplanationJson(Explanation explanation) {
    this.explanation = explanation;
    this.outcome = explanation.advice().outcome();
  }

  /**
   * Returns the text, with a line end after the last line. The alternatives in the house come from
   * the two lists of outcomes.
   *
   * @param onMachine the outcomes of every vise on the machine
   * @param ofVise the outcomes of the vise on every machine
   */
  public static String of(Explanation explanation, List<Outcome> onMachine, List<Outcome> ofVise) {
    return JsonText.of(new ExplanationJson(explanation).whole(onMachine, ofVise));
  }

  private Map<String, Object> whole(List<Outcome> onMachine, List<Outcome> ofVise) {
    Advice advice = explanation.advice();
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("machine", outcome.machine().name());
    json.put("vise", outcome.vise().name());
    json.put("verdict", outcome.verdict().code());
    json.put("margin_mm", length(outcome.margin(), Rounding.DOWN));
    json.put("best_margin_mm", length(outcome.bestMargin(), Rounding.DOWN));
    json.put(
        "usable_from_mm",
        outcome.usableOpening().map(o -> length(o.lo(), Rounding.UP)).orElse(null));
    json.put(
        "usable_to_mm",
        outcome.usableOpening().map(o -> length(o.hi(), Rounding.DOWN)).orElse(null));
    json.put("room_over_jaws_mm", length(outcome.roomOverJaws(), Rounding.DOWN));
    json.put(
        "load_left_kg", outcome.loadLeft().map(Figures::kilograms).map(Figure::new).orElse(null));
    json.put("caveats", outcome.caveats().stream().map(ExplanationJson::words).toList());
    json.put("in_doubt", outcome.inDoubt().stream().map(Measurand::path).toList());
    json.put("checked", outcome.checked().orElse(null));
    json.put("missing", outcome.missing().stream().map(Column::path).toList());
    json.put("open", outcome.openReadings().stream().map(ExplanationJson::open).toList());
    json.put("margin_at_worst_mm", length(outcome.bounds().atWorst(), Rounding.DOWN));
    json.put("margin_at_best_mm", length(outcome.bounds().atBest(), Rounding.DOWN));
    json.put("recommended", outcome.recommended().map(this::place).orElse(null));
    json.put("pairs", explanation.pairs().stream().map(this::pair).toList());
    json.put("roomiest", explanation.roomiest().map(this::roomiest).orElse(null));
    json.put("others", explanation.others().stream().map(this::other).toList());
    json.put("misses", explanation.misses().stream().map(ExplanationJson::miss).toList());
    json.put("remedies", advice.remedies().stream().map(ExplanationJson::remedy).toList());
    json.put(
        "tolerance_needed", advice.toleranceNeeded().map(ExplanationJson::needed).orElse(null));
    json.put("limits", advice.limits().stream().map(ExplanationJson::limit).toList());
    json.put(
        "other_vises", Elsewhere.vises(onMachine).stream().map(ExplanationJson::vise).toList());
    json.put(
        "other_machines",
        Elsewhere.machines(ofVise).stream().map(ExplanationJson::machine).toList());
    json.put("per_table", advice.sideBySide().map(ExplanationJson::row).orElse(null));
    json.put("not_looked_for", LookedFor.not(outcome.machine()));
    json.put("caution", CAUTION);
    return json;
  }

  private Map<String, Object> place(Recommendation place) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("handle_to", place.handleTo().word());
    json.put("x_mm", length(place.x(), Rounding.NEAREST));
    json.put("y_mm", length(place.y(), Rounding.NEAREST));
    json.put("mount", place.mount());
    json.put("bolt_thread", place.thread().isPresent() ? ThreadWords.of(place.thread()) : null);
    json.put("slots", place.slots().stream().map(slot -> new Figure(slot.toString())).toList());
    json.put("margin_mm", length(place.margin(), Rounding.DOWN));
    json.put("settable", place.settable());
    json.put("hand_mm", length(place.handGap(), Rounding.DOWN));
    json.put("reach_shortfall_mm", length(place.reachShortfall(), Rounding.UP));
    for (Side side : List.of(Side.FRONT, Side.REAR, Side.LEFT, Side.RIGHT)) {
      json.put(
          "reach_short_" + side.word() + "_mm",
          explanation.reachShort().map(sides -> length(sides.get(side), Rounding.UP)).orElse(null));
    }
    json.put("overhang_mm", length(place.overhang(), Rounding.UP));
    json.put("play_left_mm", place.play().map(p -> length(p.left(), Rounding.DOWN)).orElse(null));
    json.put("play_right_mm", place.play().map(p -> length(p.right(), Rounding.DOWN)).orElse(null));
    json.put("play_front_mm", place.play().map(p -> length(p.front(), Rounding.DOWN)).orElse(null));
    json.put("play_rear_mm", place.play().map(p -> length(p.rear(), Rounding.DOWN)).orElse(null));
    json.put("nose_not_below_mm", length(place.noseNotBelow(), Rounding.UP));
    json.put("openings_from_mm", length(place.openings().lo(), Rounding.UP));
    json.put("openings_to_mm", length(place.openings().hi(), Rounding.DOWN));
    json.put("lay_out", new TapeWords(PeopleUnit.MM, outcome.machine(), outcome.vise()).of(place));
    return json;
  }

  static Map<String, Object> limit(Limit limit) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("guard", limit.guard().name());
    json.put("part", limit.part().name());
    json.put("axis", limit.axis().letter());
    json.put("situation", limit.situation().word());
    json.put("opening", limit.opening().word());
    json.put("gap_mm", length(limit.gap(), Rounding.DOWN));
    json.put("required_mm", length(limit.required(), Rounding.UP));
    json.put("tolerance_mm", length(limit.tolerance(), Rounding.UP));
    json.put("margin_mm", length(limit.margin(), Rounding.DOWN));
    return json;
  }

  /**
   * The pair of part and guard, and where on the machine it meets, over the openings of the
   * recommended placement.
   */
  private Map<String, Object> pair(Limit limit) {
    Map<String, Object> json = limit(limit);
    WhereWords where = new WhereWords(PeopleUnit.MM, outcome.machine(), outcome.vise());
    json.put("where", where.of(limit, outcome.recommended().orElseThrow().openings()));
    return json;
  }

  private Map<String, Object> roomiest(Roomiest place) {
    return roomiest(place, place.limit().map(this::pair).orElse(null));
  }

  private static Map<String, Object> roomiest(Roomiest place, Map<String, Object> limit) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("handle_to", place.handleTo().word());
    json.put("mount", place.mount());
    json.put("x_mm", length(place.x(), Rounding.NEAREST));
    json.put("y_mm", length(place.y(), Rounding.NEAREST));
    json.put("limit", limit);
    return json;
  }

  private Map<String, Object> other(Alternative other) {
    Map<String, Object> json = roomiest(other.best());
    json.put("settable", other.settable());
    json.put("reach_shortfall_mm", length(other.reachShortfall(), Rounding.UP));
    return json;
  }

  private static Map<String, Object> miss(Miss miss) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("handle_to", miss.turn().word());
    json.put("mount", miss.mount());
    json.put("cause", words(miss.cause()));
    json.put("bolt", miss.bolt());
    json.put("short_by_mm", length(miss.shortBy(), Rounding.UP));
    return json;
  }

  private static Map<String, Object> remedy(Remedy remedy) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("remedy", remedy.name());
    json.put("amount_mm", length(remedy.amount(), Rounding.UP));
    json.put("way", remedy.way().map(way -> way.word()).orElse(null));
    // After the change the closest point may lie elsewhere on the machine, so its description is
    // left out.
    json.put("then", remedy.then().code());
    json.put(
        "place",
        roomiest(remedy.place(), remedy.place().limit().map(ExplanationJson::limit).orElse(null)));
    return json;
  }

  private static Map<String, Object> needed(ToleranceNeeded needed) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("machine_mm", length(needed.machine(), Rounding.DOWN));
    json.put("vise_mm", length(needed.vise(), Rounding.DOWN));
    return json;
  }

  private static Map<String, Object> vise(Outcome other) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("vise", other.vise().name());
    json.put("best_margin_mm", length(other.bestMargin(), Rounding.DOWN));
    return json;
  }

  private static Map<String, Object> machine(Outcome other) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("machine", other.machine().name());
    json.put("best_margin_mm", length(other.bestMargin(), Rounding.DOWN));
    return json;
  }

  private static Map<String, Object> row(SideBySide row) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("count", new Figure(String.valueOf(row.count())));
    json.put("handle_to", row.handleTo().map(Orientation::word).orElse(null));
    json.put("mount", row.mount());
    json.put(
        "positions_mm", row.positions().stream().map(at -> length(at, Rounding.NEAREST)).toList());
    return json;
  }

  private static Map<String, Object> limit(BlankLimit limit) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("column", limit.reading().column().path());
    json.put("guard", limit.reading().measurand().item());
    json.put("relation", limit.relation().code());
    json.put("limit_mm", length(limit.limit(), Rounding.NEAREST));
    json.put("sure_mm", length(limit.sure(), Rounding.NEAREST));
    return json;
  }

  /** A bound that is not there is null. */
  static Map<String, Object> open(OpenReading reading) {
    boolean blank = reading.value().isBlank();
    long lo = blank ? -Length.ENDLESS : reading.value().lo();
    long hi = blank ? Length.ENDLESS : reading.value().hi();
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("column", reading.column().path());
    json.put("item", reading.measurand().item());
    json.put("from_mm", Length.isBounded(lo) ? length(lo, Rounding.NEAREST) : null);
    json.put("to_mm", Length.isBounded(hi) ? length(hi, Rounding.NEAREST) : null);
    return json;
  }

  private static String words(Enum<?> name) {
    return name.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  static Figure length(OptionalLong length, Rounding rounding) {
    return length.isPresent() ? length(length.getAsLong(), rounding) : null;
  }

  static Figure length(long length, Rounding rounding) {
    return new Figure(Figures.millimetres(length, rounding));
  }
}
