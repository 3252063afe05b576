package org.jawroom.drawing.text;

import java.awt.Font;
import java.awt.FontFormatException;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;

/**
 * Liberation Sans, the typeface of every picture and page: the same glyphs, and so the same widths,
 * on every machine. Letters that it lacks come from the machine's fonts; see {@link TextRun}.
 */
public enum Typeface {
  PLAIN("Regular"),
  BOLD("Bold");

  /** Joiners and variation selectors, which some scripts and emoji need; names may contain them. */
  private static final String JOINERS = "\u200c\u200d\ufe0e\ufe0f";

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

  /** The font at a size in points. */
  public Font sized(double points) {
    return font.deriveFont(this == BOLD ? Font.BOLD : Font.PLAIN, (float) points);
  }

  /** The typeface that {@code font} is derived from. */
  public static Typeface of(Font font) {
    return font.isBold() ? BOLD : PLAIN;
  }

  /**
   * {@code text} in displayable form: a letter that neither this typeface nor a font of the machine
   * has, and a character that would reverse other text, becomes a dot.
   */
  public static String shown(String text) {
    StringBuilder shown = new StringBuilder();
    int before = ' ';
    for (int letter : text.codePoints().toArray()) {
      boolean joins = JOINERS.indexOf(letter) >= 0 && isForeign(before);
      before = joins || canShow(letter) ? letter : '·';
      shown.appendCodePoint(before);
    }
    return shown.toString();
  }

  /** The letters of {@code text} that are shown as dots, without duplicates. */
  public static List<String> lacking(String text) {
    return text.codePoints()
        .filter(letter -> JOINERS.indexOf(letter) < 0 && !canShow(letter))
        .distinct()
        .mapToObj(Character::toString)
        .toList();
  }

  private static boolean canShow(int letter) {
    return !isUnseen(letter) && (PLAIN.font.canDisplay(letter) || isOfTheSystem(letter));
  }

  /** The glyph of a private-use character is an agreement between one font and its users. */
  private static boolean isOfTheSystem(int letter) {
    int type = Character.getType(letter);
    return type != Character.PRIVATE_USE
        && type != Character.UNASSIGNED
        && SystemFonts.have(letter);
  }

  /** Whether the built-in typeface cannot render {@code letter} by itself in a line. */
  static boolean isForeign(int letter) {
    byte direction = Character.getDirectionality(letter);
    return direction == Character.DIRECTIONALITY_RIGHT_TO_LEFT
        || direction == Character.DIRECTIONALITY_RIGHT_TO_LEFT_ARABIC
        || isMark(letter)
        || JOINERS.indexOf(letter) >= 0
        || !PLAIN.font.canDisplay(letter);
  }

  /** Whether the built-in typeface has every letter. */
  static boolean hasAll(String letters) {
    return letters.codePoints().allMatch(PLAIN.font::canDisplay);
  }

  private static boolean isMark(int letter) {
    int type = Character.getType(letter);
    return type == Character.NON_SPACING_MARK
        || type == Character.ENCLOSING_MARK
        || type == Character.COMBINING_SPACING_MARK;
  }

  private static boolean isUnseen(int letter) {
    int type = Character.getType(letter);
    return type == Character.CONTROL
        || type == Character.FORMAT
        || type == Character.LINE_SEPARATOR
        || type == Character.PARAGRAPH_SEPARATOR;
  }

  /** Its TrueType file, for embedding; the caller closes it. */
  public InputStream open() {
    InputStream letters = Typeface.class.getResourceAsStream(file);
    if (letters == null) {
      throw new IllegalStateException("font resource missing: " + file);
    }
    return letters;
  }
}
