package org.jawroom.tables.source;

import org.jawroom.tables.cell.CellText;

/**
 * One cell that is not empty.
 *
 * @param text as typed; of a number the shortest decimals that give it; of a formula its cached
 *     value
 * @param kind what it was in the file
 * @param trouble why it cannot be read, whatever stands there; empty if it can
 * @param look what its number format shows beside it
 */
public record Cell(String text, Kind kind, String trouble, NumberLook look) {

  /** A cell that shows what it holds. */
  Cell(String text, Kind kind, String trouble) {
    this(text, kind, trouble, NumberLook.PLAIN);
  }

  /** What a file knew of a cell besides its text. */
  public enum Kind {
    TEXT,
    /** A number of a workbook: its text has a decimal point, whatever the settings say. */
    NUMBER,
    /** A truth value of a workbook: {@code TRUE} or {@code FALSE}. */
    TRUTH,
    /** A date of a workbook, in trouble wherever free text does not belong. */
    DATE
  }

  /** The literal default of a column, with a decimal point whatever the settings say. */
  public static Cell standard(String text) {
    return new Cell(text, Kind.NUMBER, "");
  }

  static Cell text(String text) {
    return new Cell(text, Kind.TEXT, "");
  }

  static Cell bad(String text, String trouble) {
    return new Cell(text, Kind.TEXT, trouble);
  }

  /** One of the items that this cell holds. */
  public Cell item(String item) {
    return new Cell(item, kind, trouble, look);
  }

  public boolean isBlank() {
    return trouble.isEmpty() && CellText.trimmed(text).isEmpty();
  }
}
