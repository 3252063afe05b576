package org.jawroom.report.card.block;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.jawroom.drawing.text.TextRun;
import org.jawroom.report.card.statement.Item;

/**
 * Text in lines, broken between words, and within a word only if it is longer than a line.
 *
 * @param indent of every line; the marker stands in it
 */
public record Prose(List<Line> lines, double size, double indent, String marker) implements Block {

  /** The line spacing in multiples of the type size. */
  static final double LEADING = 1.18;

  /**
   * From the top of a line to its baseline in multiples of the type size; the rest is for
   * descenders.
   */
  private static final double ASCENT = 0.92;

  /** A bold stretch followed by a plain one. */
  record Line(String bold, String plain, double plainAt) {}

  public static Prose of(Letters letters, Item item, double size, double width) {
    return marked(letters, "", 0, item, size, width);
  }

  public static Prose bold(Letters letters, String text, double size, double width) {
    return of(letters, new Item(text, ""), size, width);
  }

  /** Text with a number or bullet before it. */
  public static Prose marked(
      Letters letters, String marker, double indent, Item item, double size, double width) {
    Breaker breaker = new Breaker(letters, size, width - indent);
    breaker.add(letters.printable(item.label()), true);
    breaker.add(letters.printable(item.text()), false);
    return new Prose(breaker.lines(), size, indent, marker);
  }

  @Override
  public double height() {
    return lines.size() * size * LEADING;
  }

  @Override
  public void draw(Pen pen, double x, double y) throws IOException {
    double foot = y + size * ASCENT;
    if (!marker.isEmpty()) {
      pen.text(x, foot, size, true, marker);
    }
    for (Line line : lines) {
      if (!line.bold.isEmpty()) {
        pen.text(x + indent, foot, size, true, line.bold);
      }
      if (!line.plain.isEmpty()) {
        pen.text(x + indent + line.plainAt, foot, size, false, line.plain);
      }
      foot += size * LEADING;
    }
  }

  /** Breaks words into lines; the bold ones come first. */
  private static final class Breaker {
    private final Letters letters;
    private final double size;
    private final double width;
    private final List<Line> lines = new ArrayList<>();
    private String bold = "";
    private String plain = "";

    Breaker(Letters letters, double size, double width) {
      this.letters = letters;
      this.size = size;
      this.width = width;
    }

    void add(String text, boolean isBold) {
      if (!text.isEmpty()) {
        for (String word : text.split(" ")) {
          addWord(word, isBold);
        }
      }
    }

    private void addWord(String word, boolean isBold) {
      if (fits(word, isBold)) {
        append(word, isBold);
        return;
      }
      endLine();
      String rest = word;
      while (!fits(rest, isBold)) {
        int end = TextRun.next(rest, 0);
        while (fits(rest.substring(0, TextRun.next(rest, end)), isBold)) {
          end = TextRun.next(rest, end);
        }
        append(rest.substring(0, end), isBold);
        endLine();
        rest = rest.substring(end);
      }
      append(rest, isBold);
    }

    private boolean fits(String word, boolean isBold) {
      return isBold
          ? width(joined(bold, word), true) <= width
          : plainAt() + width(joined(plain, word), false) <= width;
    }

    private void append(String word, boolean isBold) {
      if (isBold) {
        bold = joined(bold, word);
      } else {
        plain = joined(plain, word);
      }
    }

    private void endLine() {
      if (!bold.isEmpty() || !plain.isEmpty()) {
        lines.add(new Line(bold, plain, plainAt()));
        bold = "";
        plain = "";
      }
    }

    List<Line> lines() {
      endLine();
      return List.copyOf(lines);
    }

    private double plainAt() {
      return bold.isEmpty() ? 0 : width(bold, true) + width(" ", false);
    }

    private double width(String text, boolean isBold) {
      return letters.width(text, isBold, size);
    }

    private static String joined(String before, String word) {
      return before.isEmpty() ? word : before + " " + word;
    }
  }
}
