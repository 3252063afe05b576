package org.jawroom.report.format;

import java.util.regex.Pattern;

/**
 * Estimates the number of lines of wrapped text from character counts, so that the result is the
 * same on every platform.
 */
public final class TextLines {
  private static final Pattern BREAKS = Pattern.compile("(?<=[ -])");

  private TextLines() {}

  /**
   * Returns the number of lines of {@code text} at {@code perLine} characters each, broken between
   * words and after hyphens, and within a word only if it is longer than a line; at least 1.
   */
  public static int count(String text, int perLine) {
    return text.lines().mapToInt(line -> wrapped(line, perLine)).sum() + (text.isEmpty() ? 1 : 0);
  }

  /**
   * Returns how many characters of {@code points} fit on a line of a column {@code width} digits of
   * 10 points wide; letters are on average a tenth narrower than digits.
   */
  public static int perLine(int width, int points) {
    return Math.max(1, width * 11 / points);
  }

  private static int wrapped(String line, int perLine) {
    int lines = 1;
    int used = 0;
    for (String piece : BREAKS.split(line)) {
      // A space at the end of a line takes no room.
      int length = piece.stripTrailing().length();
      if (used > 0 && used + length > perLine) {
        lines++;
        used = 0;
      }
      int full = Math.max(0, (length - 1) / perLine);
      lines += full;
      used += piece.length() - full * perLine;
    }
    return lines;
  }
}
