package org.jawroom.report.page;

import java.util.HexFormat;
import java.util.Iterator;
import java.util.List;
import java.util.Map;

/**
 * Writes maps, lists, numbers, booleans, null and text as JSON on one line that is safe inside an
 * HTML script element: no character can end the element, and none can control or reverse the
 * displayed text.
 */
final class DataText {
  private final StringBuilder text = new StringBuilder();

  private DataText() {}

  static String of(Object value) {
    DataText data = new DataText();
    data.write(value);
    return data.text.toString();
  }

  private void write(Object value) {
    if (value instanceof Map<?, ?> map) {
      text.append('{');
      Iterator<? extends Map.Entry<?, ?>> entries = map.entrySet().iterator();
      while (entries.hasNext()) {
        Map.Entry<?, ?> entry = entries.next();
        quote(entry.getKey().toString());
        text.append(':');
        write(entry.getValue());
        text.append(entries.hasNext() ? "," : "");
      }
      text.append('}');
    } else if (value instanceof List<?> list) {
      text.append('[');
      Iterator<?> members = list.iterator();
      while (members.hasNext()) {
        write(members.next());
        text.append(members.hasNext() ? "," : "");
      }
      text.append(']');
    } else if (value == null || value instanceof Number || value instanceof Boolean) {
      text.append(value);
    } else {
      quote(value.toString());
    }
  }

  private void quote(String string) {
    text.append('"');
    string.codePoints().forEach(this::letter);
    text.append('"');
  }

  private void letter(int letter) {
    if (letter == '"' || letter == '\\') {
      text.append('\\').append((char) letter);
    } else if (Character.isISOControl(letter) || Character.getType(letter) == Character.FORMAT) {
      text.append('?');
    } else if (letter == '<'
        || letter == '>'
        || letter == '&'
        || letter == 0x2028
        || letter == 0x2029
        || Character.getType(letter) == Character.SURROGATE) {
      text.append("\\u").append(HexFormat.of().toHexDigits((char) letter));
    } else {
      text.appendCodePoint(letter);
    }
  }
}
