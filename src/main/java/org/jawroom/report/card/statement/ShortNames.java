package org.jawroom.report.card.statement;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jawroom.drawing.text.TextRun;

/** Shortens long names so that the content fits on a page. */
public final class ShortNames {
  private ShortNames() {}

  /**
   * Shortens every one of {@code names} that occurs in {@code text} to {@code longest} letters, the
   * longest name first.
   */
  public static String cut(String text, List<String> names, int longest) {
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
   * Keeps the first and last letters around an ellipsis, {@code longest} in all; returns a name
   * unchanged if it is no longer. A letter is a grapheme.
   */
  public static String cut(String text, int longest) {
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

  /** The end offset of each grapheme. */
  private static List<Integer> ends(String text) {
    List<Integer> ends = new ArrayList<>();
    for (int at = 0; at < text.length(); ) {
      at = TextRun.next(text, at);
      ends.add(at);
    }
    return ends;
  }
}
