package org.jawroom.report.format;

import java.util.ArrayList;
import java.util.List;

/** Breaks text into lines. */
public final class WrappedLines {
  private WrappedLines() {}

  /**
   * {@code text} in lines of at most {@code columns} characters, broken between words, and within a
   * word only where it is longer than a line; {@code first} blanks before the first and {@code
   * others} before every other.
   */
  public static List<String> wrapped(String text, int first, int others, int columns) {
    List<String> lines = new ArrayList<>();
    String rest = text;
    int before = first;
    while (rest.codePointCount(0, rest.length()) > columns - before) {
      int most = rest.offsetByCodePoints(0, columns - before);
      int blank = rest.lastIndexOf(' ', most);
      int end = blank > 0 ? blank : most;
      lines.add(" ".repeat(before) + rest.substring(0, end));
      rest = rest.substring(end).stripLeading();
      before = others;
    }
    lines.add(" ".repeat(before) + rest);
    return lines;
  }
}
