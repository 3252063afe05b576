package org.jawroom.tables.cell;

import java.text.Normalizer;
import java.util.Locale;

/** Names of machines, guards, vises, parts, mounts and jobs. */
public final class Names {
  private Names() {}

  private static final int LONGEST = 100;

  /** What a spreadsheet takes for the start of a formula, the full-width forms too. */
  private static final String FORMULA_STARTS = "=+-@\uff1d\uff0b\uff0d\uff20";

  /** Characters that nobody sees, by which two names would look alike or turn the text round. */
  private static final String INVISIBLE =
      "\u061c\u200b\u200e\u200f\u202a\u202b\u202c\u202d\u202e\u2060\u2066\u2067\u2068\u2069\ufeff";

  /** {@code text} trimmed, if it may be a name. */
  public static String parse(String text) throws BadCell {
    // Plain spaces only: a tab at the end is a character to refuse, not space to trim.
    String name = text.replaceAll("^\\p{Zs}+|\\p{Zs}+$", "");
    if (name.codePoints().anyMatch(Names::isUnseen)) {
      throw new BadCell(
          "holds a line break, a tab or another character that nobody sees; retype it");
    }
    if (FORMULA_STARTS.indexOf(name.charAt(0)) >= 0) {
      throw new BadCell(
          "begins with " + name.charAt(0) + ", which spreadsheets take for a formula");
    }
    if (name.codePointCount(0, name.length()) > LONGEST) {
      throw new BadCell("is longer than 100 characters");
    }
    if (name.equalsIgnoreCase("none")) {
      throw new BadCell("is not allowed here; give it a name");
    }
    return name;
  }

  /**
   * As names are compared: case, the kind and number of spaces, and how accents are coded do not
   * count.
   */
  public static String key(String name) {
    String spaced = CellText.trimmed(name).replaceAll("[\\s\\p{Zs}]+", " ");
    return Normalizer.normalize(spaced, Normalizer.Form.NFC)
        .toUpperCase(Locale.ROOT)
        .toLowerCase(Locale.ROOT);
  }

  private static boolean isUnseen(int letter) {
    int type = Character.getType(letter);
    return type == Character.CONTROL
        || type == Character.LINE_SEPARATOR
        || type == Character.PARAGRAPH_SEPARATOR
        || type == Character.SURROGATE
        || INVISIBLE.indexOf(letter) >= 0;
  }
}
