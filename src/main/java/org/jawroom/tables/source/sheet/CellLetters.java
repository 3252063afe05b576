package org.jawroom.tables.source.sheet;

import org.apache.poi.xssf.usermodel.XSSFRichTextString;
import org.jawroom.tables.source.grid.Grid;

/** Collects the letters of one cell, up to the first one beyond the limit. */
final class CellLetters {
  private final StringBuilder letters = new StringBuilder();

  void clear() {
    letters.setLength(0);
  }

  void add(char[] text, int start, int length) {
    int room = Grid.LONGEST_CELL + 1 - letters.length();
    letters.append(text, start, Math.min(room, length));
  }

  /** The text, with the escapes {@code _x000D_} of characters that XML cannot hold decoded. */
  String text() {
    String text = letters.toString();
    return text.contains("_x") ? new XSSFRichTextString(text).getString() : text;
  }
}
