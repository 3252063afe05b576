package org.jawroom.report.format;

import java.util.ArrayList;
import java.util.List;

/** Wraps text into lines. */
public final class WrappedLines {
  private WrappedLines() {}

  /**
   * Wraps {@code text} into lines of at most {@code columns} characters, broken between words, and
   * within a word only if it is longer than a line; the first line is indented by {@code first}
   * spaces and every other by {@code others}.
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
