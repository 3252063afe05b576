package org.jawroom.drawing.text;

import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/** Text on a drawing; every width comes from the typeface itself, whatever the output format. */
public final class Lettering {
  public static final double SMALL = 7;
  public static final double PLAIN = 8;
  public static final double LARGE = 10.5;

  private static final Color HALO = Color.WHITE;

  private Lettering() {}

  /** The width of a text in points. */
  public static double width(Typeface face, double size, String text) {
    return TextRun.of(Typeface.shown(text)).stream()
        .mapToDouble(run -> run.width(face, size))
        .sum();
  }

  /** Writes text from x with its baseline at y. */
  public static void write(
      Graphics2D pen, Typeface face, double size, String text, double x, double y) {
    Font font = face.sized(size);
    pen.setFont(font);
    pen.setColor(Color.BLACK);
    double at = x;
    for (TextRun run : TextRun.of(Typeface.shown(text))) {
      if (run.outlined()) {
        AffineTransform there = AffineTransform.getTranslateInstance(at, y);
        pen.fill(there.createTransformedShape(run.outline(face, size)));
      } else {
        pen.drawString(run.text(), (float) at, (float) y);
      }
      at += run.width(face, size);
    }
  }

  /** Writes text on a white background, so that it is legible over lines. */
  public static void writeClear(
      Graphics2D pen, Typeface face, double size, String text, double x, double y) {
    pen.setColor(HALO);
    pen.fill(new Rectangle2D.Double(x - 1, y - size * 0.8, width(face, size, text) + 2, size));
    write(pen, face, size, text, x, y);
  }

  /** Cuts text short with an ellipsis if it is wider than {@code room}. */
  public static String fitted(Typeface face, double size, String text, double room) {
    if (width(face, size, text) <= room) {
      return text;
    }
    int end = text.length();
    while (end > 0 && width(face, size, text.substring(0, end).strip() + "…") > room) {
      end = TextRun.before(text, end);
    }
    return text.substring(0, end).strip() + "…";
  }

  /**
   * Wraps to lines no wider than {@code room} and keeps every letter: breaks words that are too
   * long.
   */
  public static List<String> whole(Typeface face, double size, String text, double room) {
    StringBuilder parted = new StringBuilder();
    for (String word : text.split(" ")) {
      int from = 0;
      for (int at = 0; at < word.length(); at = TextRun.next(word, at)) {
        if (at > from && width(face, size, word.substring(from, TextRun.next(word, at))) > room) {
          parted.append(word, from, at).append(' ');
          from = at;
        }
      }
      parted.append(word, from, word.length()).append(' ');
    }
    return wrapped(face, size, parted.toString().strip(), room);
  }

  /** Wraps to lines no wider than {@code room}, broken at spaces; cuts a longer word short. */
  public static List<String> wrapped(Typeface face, double size, String text, double room) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : text.split(" ")) {
      String longer = line.isEmpty() ? word : line + " " + word;
      if (!line.isEmpty() && width(face, size, longer) > room) {
        lines.add(fitted(face, size, line.toString(), room));
        line.setLength(0);
        line.append(word);
      } else {
        line.setLength(0);
        line.append(longer);
      }
    }
    lines.add(fitted(face, size, line.toString(), room));
    return lines;
  }
}
