package org.jawroom.tables.source.grid;

import java.util.Optional;
import java.util.OptionalInt;

/**
 * One fault in the inputs.
 *
 * @param origin the file, sheet or option
 * @param row the row number as shown in the file, the first being 1; empty if no particular row
 * @param column its name; empty if no particular column
 * @param found the text found there; empty if something is missing
 * @param message what is wrong, continuing the text found, and what would be right
 */
public record Fault(
    String origin, OptionalInt row, Optional<String> column, String found, String message) {

  private static final int LONGEST_FOUND = 60;

  /** One line, as {@code machines.csv row 7, column rear_gap: "1,250" could be 1.25 or 1250; …}. */
  @Override
  public String toString() {
    StringBuilder line = new StringBuilder(visible(origin));
    row.ifPresent(number -> line.append(" row ").append(number));
    column.ifPresent(name -> line.append(", column ").append(visible(name)));
    line.append(": ");
    if (!found.isEmpty()) {
      line.append('"').append(visible(shortened(found))).append("\" ");
    }
    return line.append(visible(message)).toString();
  }

  /** Shortens a text found to what fits on a line. */
  public static String shortened(String text) {
    return text.codePointCount(0, text.length()) <= LONGEST_FOUND
        ? text
        : text.substring(0, text.offsetByCodePoints(0, LONGEST_FOUND)) + "…";
  }

  /** Spells out characters that would break the line or reverse its text. */
  public static String visible(String text) {
    StringBuilder line = new StringBuilder();
    text.codePoints()
        .forEach(
            letter -> {
              int type = Character.getType(letter);
              boolean unseen =
                  type == Character.CONTROL
                      || type == Character.FORMAT
                      || type == Character.LINE_SEPARATOR
                      || type == Character.PARAGRAPH_SEPARATOR
                      || type == Character.SURROGATE
                      || type == Character.UNASSIGNED;
              if (unseen) {
                line.append(String.format("\\u%04X", letter));
              } else {
                line.appendCodePoint(letter);
              }
            });
    return line.toString();
  }
}
