package org.jawroom.report.format;

/**
 * How many lines wrapped text takes; from character counts, so that it comes out the same
 * everywhere.
 */
public final class TextLines {
  private TextLines() {}

  /**
   * Lines that {@code text} takes at {@code perLine} characters each, broken between words and
   * after hyphens, and within a word only where it is longer than a line; 1 at least.
   */
  public static int count(String text, int perLine) {
    return text.lines().mapToInt(line -> wrapped(line, perLine)).sum() + (text.isEmpty() ? 1 : 0);
  }

  /**
   * Characters of {@code points} that a line holds in a column {@code width} digits of 10 points
   * wide; letters are on the whole a tenth narrower than digits.
   */
  public static int perLine(int width, int points) {
    return Math.max(1, width * 11 / points);
  }

  private static int wrapped(String line, int perLine) {
    int lines = 1;
    int used = 0;
    for (String piece : line.split("(?<=[ -])")) {
      // A blank at the end of a line takes no room.
      if (used > 0 && used + piece.stripTrailing().length() > perLine) {
        lines++;
        used = 0;
      }
      lines += Math.max(0, (piece.stripTrailing().length() - 1) / perLine);
      used += piece.length();
      used = used <= perLine ? used : (used - 1) % perLine + 1;
    }
    return lines;
  }
}
