package org.jawroom.drawing;

import java.awt.Font;
import java.awt.FontFormatException;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;

/**
 * Liberation Sans, the one typeface of every picture and page: the same letters, and so the same
 * line lengths, whatever fonts a machine has.
 */
public enum Typeface {
  PLAIN("Regular"),
  BOLD("Bold");

  private final String file;
  private final Font font;

  Typeface(String weight) {
    file = "/liberation/LiberationSans-" + weight + ".ttf";
    try (InputStream letters = open()) {
      font = Font.createFont(Font.TRUETYPE_FONT, letters);
    } catch (IOException unread) {
      throw new UncheckedIOException(unread);
    } catch (FontFormatException broken) {
      throw new IllegalStateException(file, broken);
    }
  }

  /** In a size in points. */
  public Font sized(double points) {
    return font.deriveFont(this == BOLD ? Font.BOLD : Font.PLAIN, (float) points);
  }

  /** The one that {@code font} is a size of. */
  static Typeface of(Font font) {
    return font.isBold() ? BOLD : PLAIN;
  }

  /**
   * {@code text} as it can be shown: what has no letter, or would turn others round, becomes a dot.
   */
  public static String shown(String text) {
    StringBuilder shown = new StringBuilder();
    text.codePoints()
        .map(letter -> PLAIN.font.canDisplay(letter) && !isUnseen(letter) ? letter : '·')
        .forEach(shown::appendCodePoint);
    return shown.toString();
  }

  private static boolean isUnseen(int letter) {
    int type = Character.getType(letter);
    return type == Character.CONTROL
        || type == Character.FORMAT
        || type == Character.LINE_SEPARATOR
        || type == Character.PARAGRAPH_SEPARATOR;
  }

  /** Its TrueType file, to embed; the caller closes it. */
  public InputStream open() {
    InputStream letters = Typeface.class.getResourceAsStream(file);
    if (letters == null) {
      throw new IllegalStateException(file + " is missing");
    }
    return letters;
  }
}
