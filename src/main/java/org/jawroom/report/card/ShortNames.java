package org.jawroom.report.card;

import java.util.Comparator;
import java.util.List;

/** Cuts long names so that a page holds them. */
final class ShortNames {
  private ShortNames() {}

  /**
   * Every one of {@code names} that stands in {@code text}, the longest first, cut to {@code
   * longest} letters.
   */
  static String cut(String text, List<String> names, int longest) {
    List<String> tooLong =
        names.stream()
            .filter(name -> length(name) > longest)
            .sorted(Comparator.comparingInt(String::length).reversed())
            .toList();
    String shorter = text;
    for (String name : tooLong) {
      shorter = shorter.replace(name, cut(name, longest));
    }
    return shorter;
  }

  /**
   * Its first and last letters about an ellipsis, {@code longest} in all; as it stands if no longer
   * than that.
   */
  static String cut(String text, int longest) {
    if (length(text) <= longest) {
      return text;
    }
    int tail = longest / 3;
    int head = longest - 1 - tail;
    return text.substring(0, text.offsetByCodePoints(0, head))
        + "…"
        + text.substring(text.offsetByCodePoints(text.length(), -tail));
  }

  private static int length(String text) {
    return text.codePointCount(0, text.length());
  }
}
