package org.jawroom.report.assess;

import java.util.ArrayList;
import java.util.List;
import org.jawroom.drawing.text.TextRun;
import org.jawroom.drawing.text.Typeface;

/** Wraps text to the width of a column by its glyph widths. */
final class FittedLines {
  private FittedLines() {}

  /**
   * Breaks between words, and within a word only if it is wider than a line; returns at least one
   * line.
   */
  static List<String> of(String text, Typeface face, double points, double width) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : text.split(" ", -1)) {
      String rest = word;
      if (line.length() > 0 && !goes(face, points, line + " " + rest, width)) {
        lines.add(line.toString());
        line.setLength(0);
      }
      while (line.length() == 0 && !goes(face, points, rest, width)) {
        int most = most(face, points, rest, width);
        lines.add(rest.substring(0, most));
        rest = rest.substring(most);
      }
      line.append(line.length() > 0 ? " " : "").append(rest);
    }
    lines.add(line.toString());
    return lines;
  }

  private static int most(Typeface face, double points, String word, double width) {
    int end = TextRun.next(word, 0);
    while (end < word.length()
        && goes(face, points, word.substring(0, TextRun.next(word, end)), width)) {
      end = TextRun.next(word, end);
    }
    return end;
  }

  private static boolean goes(Typeface face, double points, String text, double width) {
    return text.isEmpty()
        || TextRun.next(text, 0) == text.length()
        || TextRun.of(text).stream().mapToDouble(run -> run.width(face, points)).sum() <= width;
  }
}
