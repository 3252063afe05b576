package org.jawroom.tables.source;

import org.apache.poi.xssf.usermodel.XSSFRichTextString;

/** Gathers the letters of one cell, and no more of them than show that they are too many. */
final class CellLetters {
  private final StringBuilder letters = new StringBuilder();

  void clear() {
    letters.setLength(0);
  }

  void add(char[] text, int start, int length) {
    int room = Grid.LONGEST_CELL + 1 - letters.length();
    letters.append(text, start, Math.min(room, length));
  }

  /**
   * What was gathered; characters that XML cannot hold stand in it as {@code _x000D_} and are put
   * back.
   */
  String text() {
    String text = letters.toString();
    return text.contains("_x") ? new XSSFRichTextString(text).getString() : text;
  }
}
