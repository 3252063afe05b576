package org.jawroom.tables.cell;

import java.util.Set;

/** Normalises text as people and spreadsheets write it before it is parsed. */
public final class CellText {
  private CellText() {}

  private static final int LONGEST_NUMBER = 100;

  private static final String MINUSES =
      "\u2010\u2011\u2012\u2013\u2014\u2015\u2212\u207b\u208b\u2796\ufe58\ufe63\uff0d";

  private static final Set<String> PLACEHOLDERS =
      Set.of("?", "??", "-", "--", "n/a", "na", "tbd", "unknown", "x", ".", "*");

  /** Removes white space of any kind around {@code text}. */
  public static String trimmed(String text) {
    int start = 0;
    int end = text.length();
    while (start < end && isSpace(text.charAt(start))) {
      start++;
    }
    while (end > start && isSpace(text.charAt(end - 1))) {
      end--;
    }
    return text.substring(start, end);
  }

  /**
   * Trims the text, replaces every kind of minus by {@code -} and every run of any kind of space by
   * one plain space.
   */
  static String plain(String text) {
    StringBuilder plain = new StringBuilder();
    boolean space = false;
    for (char letter : trimmed(text).toCharArray()) {
      if (isSpace(letter)) {
        space = true;
        continue;
      }
      if (space) {
        plain.append(' ');
        space = false;
      }
      plain.append(MINUSES.indexOf(letter) >= 0 ? '-' : letter);
    }
    return plain.toString();
  }

  /** Refuses {@code plain} if it cannot be any kind of number. */
  static void refuseHopeless(String plain) throws BadCell {
    if (plain.length() > LONGEST_NUMBER) {
      throw new BadCell("is too long for a number");
    }
    if (plain.equalsIgnoreCase("none")) {
      throw new BadCell("is not allowed here; leave the cell blank if it is not known");
    }
    if (PLACEHOLDERS.contains(plain.toLowerCase(java.util.Locale.ROOT))) {
      throw new BadCell("is no number; leave the cell blank if it is not known");
    }
    if (DateText.isDate(plain)) {
      throw new BadCell(DateText.MESSAGE);
    }
  }

  private static boolean isSpace(char letter) {
    return Character.isWhitespace(letter) || Character.isSpaceChar(letter) || letter == '\ufeff';
  }
}
