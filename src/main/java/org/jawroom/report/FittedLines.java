package org.jawroom.report;

import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.util.ArrayList;
import java.util.List;
import org.jawroom.drawing.Typeface;

/** Breaks text into lines that are no wider than a column, by the widths of its letters. */
final class FittedLines {
  private static final FontRenderContext EXACT = new FontRenderContext(null, true, true);

  private FittedLines() {}

  /**
   * Broken between words, and within a word only where it is wider than a line; one line at least.
   */
  static List<String> of(String text, Typeface face, double points, double width) {
    Font font = face.sized(points);
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : text.split(" ", -1)) {
      String rest = word;
      if (line.length() > 0 && !goes(font, line + " " + rest, width)) {
        lines.add(line.toString());
        line.setLength(0);
      }
      while (line.length() == 0 && !goes(font, rest, width)) {
        int most = most(font, rest, width);
        lines.add(rest.substring(0, most));
        rest = rest.substring(most);
      }
      line.append(line.length() > 0 ? " " : "").append(rest);
    }
    lines.add(line.toString());
    return lines;
  }

  private static int most(Font font, String word, double width) {
    int end = word.offsetByCodePoints(0, 1);
    while (end < word.length()
        && goes(font, word.substring(0, word.offsetByCodePoints(end, 1)), width)) {
      end = word.offsetByCodePoints(end, 1);
    }
    return end;
  }

  private static boolean goes(Font font, String text, double width) {
    return text.codePointCount(0, text.length()) <= 1
        || font.getStringBounds(text, EXACT).getWidth() <= width;
  }
}
