package org.jawroom.tables.source.grid;

import org.jawroom.tables.cell.CellText;

/**
 * One cell that is not empty.
 *
 * @param text as typed; for a number its shortest decimal representation; for a formula its cached
 *     value
 * @param kind its type in the file
 * @param trouble why it cannot be read, whatever its column; empty if it can
 * @param look what its number format displays in addition
 */
public record Cell(String text, Kind kind, String trouble, NumberLook look) {

  /** A cell that displays its content. */
  public Cell(String text, Kind kind, String trouble) {
    this(text, kind, trouble, NumberLook.PLAIN);
  }

  /** The type of a cell in the file. */
  public enum Kind {
    TEXT,
    /** A number of a workbook: its text has a decimal point, whatever the settings say. */
    NUMBER,
    /** A boolean of a workbook: {@code TRUE} or {@code FALSE}. */
    TRUTH,
    /** A date of a workbook; unreadable in any column but free text. */
    DATE
  }

  /** The literal default of a column, with a decimal point whatever the settings say. */
  public static Cell standard(String text) {
    return new Cell(text, Kind.NUMBER, "");
  }

  public static Cell text(String text) {
    return new Cell(text, Kind.TEXT, "");
  }

  public static Cell bad(String text, String trouble) {
    return new Cell(text, Kind.TEXT, trouble);
  }

  /** One of the items in this cell. */
  public Cell item(String item) {
    return new Cell(item, kind, trouble, look);
  }

  public boolean isBlank() {
    return trouble.isEmpty() && CellText.trimmed(text).isEmpty();
  }
}
