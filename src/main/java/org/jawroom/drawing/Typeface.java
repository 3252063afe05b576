package org.jawroom.drawing;

import java.awt.Font;
import java.awt.FontFormatException;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;

/**
 * Liberation Sans, the one typeface of every picture and page: the same letters, and so the same line lengths,
 * whatever fonts a machine has.
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
    return font.deriveFont((float) points);
  }

  /** Whether every letter of {@code text} is in it. */
  public boolean has(String text) {
    return font.canDisplayUpTo(text) < 0;
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
