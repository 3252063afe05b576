package org.jawroom.report.format;

import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;

/**
 * Writes JSON (RFC 8259) from maps (in their own order), lists, booleans, {@link Figure}s and null;
 * anything else becomes its text. Characters that could control a terminal, and those beyond the
 * basic multilingual plane, are escaped.
 */
public final class JsonText {
  private JsonText() {}

  /** A number that is already rounded. */
  public record Figure(String digits) {}

  /** Writes {@code value} over several lines and ends the last one. */
  public static String of(Object value) {
    StringBuilder text = new StringBuilder();
    write(value, text, "");
    return text.append('\n').toString();
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
    } else if (value instanceof Boolean) {
      text.append(value);
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
              } else if (mustBeEscaped((char) letter)) {
                text.append("\\u").append(HexFormat.of().toHexDigits((char) letter));
              } else {
                text.append((char) letter);
              }
            });
    text.append('"');
  }

  private static boolean mustBeEscaped(char letter) {
    return Character.isISOControl(letter)
        || Character.isSurrogate(letter)
        || Character.getType(letter) == Character.FORMAT;
  }
}
