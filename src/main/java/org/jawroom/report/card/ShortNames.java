package org.jawroom.report.card;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jawroom.drawing.TextRun;

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
   * than that. A letter is what people see as one.
   */
  static String cut(String text, int longest) {
    if (length(text) <= longest) {
      return text;
    }
    int tail = longest / 3;
    int head = longest - 1 - tail;
    List<Integer> ends = ends(text);
    return text.substring(0, ends.get(head - 1))
        + "…"
        + text.substring(ends.get(ends.size() - tail - 1));
  }

  private static int length(String text) {
    return ends(text).size();
  }

  /** Where each letter ends. */
  private static List<Integer> ends(String text) {
    List<Integer> ends = new ArrayList<>();
    for (int at = 0; at < text.length(); ) {
      at = TextRun.next(text, at);
      ends.add(at);
    }
    return ends;
  }
}
