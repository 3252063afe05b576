package org.jawroom.report;

import java.util.ArrayList;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalLong;
import org.jawroom.advice.BlankLimit;
import org.jawroom.advice.Explanation;
import org.jawroom.advice.Remedy;
import org.jawroom.clearance.Limit;
import org.jawroom.placement.Alternative;
import org.jawroom.placement.Miss;
import org.jawroom.placement.Outcome;
import org.jawroom.placement.Recommendation;
import org.jawroom.placement.Roomiest;
import org.jawroom.shop.Column;

/**
 * One pairing explained for programs: a JSON object (RFC 8259), keys always in the same order, lengths in mm to
 * 0.001 rounded as in {@code pairings.csv}, {@code null} where something does not apply.
 */
public final class ExplanationJson {
  private ExplanationJson() {}

  public static String of(Explanation explanation) {
    Outcome outcome = explanation.advice().outcome();
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("machine", outcome.machine().name());
    json.put("vise", outcome.vise().name());
    json.put("verdict", outcome.verdict().code());
    json.put("best_margin_mm", length(outcome.bestMargin(), Rounding.DOWN));
    json.put("usable_from_mm", outcome.usableOpening().map(o -> length(o.lo(), Rounding.UP)).orElse(null));
    json.put("usable_to_mm", outcome.usableOpening().map(o -> length(o.hi(), Rounding.DOWN)).orElse(null));
    json.put("room_over_jaws_mm", length(outcome.roomOverJaws(), Rounding.DOWN));
    json.put("missing", outcome.missing().stream().map(Column::path).toList());
    json.put("recommended", outcome.recommended().map(place -> place(place, explanation)).orElse(null));
    json.put("pairs", explanation.pairs().stream().map(ExplanationJson::pair).toList());
    json.put("roomiest", explanation.roomiest().map(ExplanationJson::roomiest).orElse(null));
    json.put("others", explanation.others().stream().map(ExplanationJson::other).toList());
    json.put("misses", explanation.misses().stream().map(ExplanationJson::miss).toList());
    json.put("remedies", explanation.advice().remedies().stream().map(ExplanationJson::remedy).toList());
    json.put("limits", explanation.advice().limits().stream().map(ExplanationJson::limit).toList());
    json.put("per_table", explanation.advice().sideBySide().map(row -> new Figure("" + row.count())).orElse(null));
    json.put(
        "caution",
        "does not replace the check on the machine; lock out before reaching in; local codes and the machine"
            + " maker's instructions come first");
    StringBuilder text = new StringBuilder();
    write(json, text, "");
    return text.append('\n').toString();
  }

  /** A number, already rounded. */
  private record Figure(String digits) {}

  private static Map<String, Object> place(Recommendation place, Explanation explanation) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("handle_to", place.handleTo().word());
    json.put("x_mm", length(place.x(), Rounding.NEAREST));
    json.put("y_mm", length(place.y(), Rounding.NEAREST));
    json.put("mount", place.mount());
    json.put("slots", place.slots().stream().map(slot -> new Figure(slot.toString())).toList());
    json.put("reach_shortfall_mm", length(place.reachShortfall(), Rounding.UP));
    json.put("reach_short_front_mm", explanation.reachShort().map(s -> length(s.front(), Rounding.UP)).orElse(null));
    json.put("reach_short_rear_mm", explanation.reachShort().map(s -> length(s.rear(), Rounding.UP)).orElse(null));
    json.put("reach_short_left_mm", explanation.reachShort().map(s -> length(s.left(), Rounding.UP)).orElse(null));
    json.put("reach_short_right_mm", explanation.reachShort().map(s -> length(s.right(), Rounding.UP)).orElse(null));
    json.put("overhang_mm", length(place.overhang(), Rounding.UP));
    json.put("play_left_mm", place.play().map(p -> length(p.left(), Rounding.DOWN)).orElse(null));
    json.put("play_right_mm", place.play().map(p -> length(p.right(), Rounding.DOWN)).orElse(null));
    json.put("play_front_mm", place.play().map(p -> length(p.front(), Rounding.DOWN)).orElse(null));
    json.put("play_rear_mm", place.play().map(p -> length(p.rear(), Rounding.DOWN)).orElse(null));
    json.put("nose_not_below_mm", length(place.noseNotBelow(), Rounding.UP));
    return json;
  }

  private static Map<String, Object> pair(Limit limit) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("guard", limit.guard());
    json.put("part", limit.part());
    json.put("axis", limit.axis().letter());
    json.put("situation", limit.situation().word());
    json.put("opening", limit.opening().word());
    json.put("gap_mm", length(limit.gap(), Rounding.DOWN));
    json.put("required_mm", length(limit.required(), Rounding.UP));
    json.put("tolerance_mm", length(limit.tolerance(), Rounding.UP));
    json.put("margin_mm", length(limit.margin(), Rounding.DOWN));
    return json;
  }

  private static Map<String, Object> roomiest(Roomiest place) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("handle_to", place.handleTo().word());
    json.put("mount", place.mount());
    json.put("x_mm", length(place.x(), Rounding.NEAREST));
    json.put("y_mm", length(place.y(), Rounding.NEAREST));
    json.put("limit", place.limit().map(ExplanationJson::pair).orElse(null));
    return json;
  }

  private static Map<String, Object> other(Alternative other) {
    Map<String, Object> json = roomiest(other.best());
    json.put("reach_shortfall_mm", length(other.reachShortfall(), Rounding.UP));
    return json;
  }

  private static Map<String, Object> miss(Miss miss) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("handle_to", miss.turn().word());
    json.put("mount", miss.mount());
    json.put("cause", miss.cause().name().toLowerCase(Locale.ROOT).replace('_', ' '));
    json.put("bolt", miss.bolt());
    json.put("short_by_mm", length(miss.shortBy(), Rounding.UP));
    return json;
  }

  private static Map<String, Object> remedy(Remedy remedy) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("remedy", remedy.name());
    json.put("amount_mm", length(remedy.amount(), Rounding.UP));
    json.put("way", remedy.way().map(way -> way.word()).orElse(null));
    json.put("then", roomiest(remedy.then()));
    return json;
  }

  private static Map<String, Object> limit(BlankLimit limit) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("column", limit.column().path());
    json.put("guard", limit.guard());
    json.put("relation", limit.relation().code());
    json.put("limit_mm", length(limit.limit(), Rounding.NEAREST));
    return json;
  }

  private static Figure length(OptionalLong length, Rounding rounding) {
    return length.isPresent() ? length(length.getAsLong(), rounding) : null;
  }

  private static Figure length(long length, Rounding rounding) {
    return new Figure(Figures.millimetres(length, rounding));
  }

  private static void write(Object value, StringBuilder text, String indent) {
    if (value instanceof Map<?, ?> map) {
      List<String> parts = new ArrayList<>();
      map.forEach(
          (key, inner) -> {
            StringBuilder part = new StringBuilder(indent).append("  ");
            quote(key.toString(), part);
            write(inner, part.append(": "), indent + "  ");
            parts.add(part.toString());
          });
      text.append("{\n").append(String.join(",\n", parts)).append('\n').append(indent).append('}');
    } else if (value instanceof List<?> list) {
      List<String> parts = new ArrayList<>();
      for (Object inner : list) {
        StringBuilder part = new StringBuilder();
        write(inner, part, indent);
        parts.add(part.toString());
      }
      text.append('[').append(String.join(", ", parts)).append(']');
    } else if (value instanceof Figure figure) {
      text.append(figure.digits());
    } else if (value == null) {
      text.append("null");
    } else {
      quote(value.toString(), text);
    }
  }

  private static void quote(String string, StringBuilder text) {
    text.append('"');
    string
        .chars()
        .forEach(
            letter -> {
              if (letter == '"' || letter == '\\') {
                text.append('\\').append((char) letter);
              } else if (letter < 0x20 || letter == 0x7F || Character.isSurrogate((char) letter)) {
                text.append("\\u").append(HexFormat.of().toHexDigits((char) letter));
              } else {
                text.append((char) letter);
              }
            });
    text.append('"');
  }
}
