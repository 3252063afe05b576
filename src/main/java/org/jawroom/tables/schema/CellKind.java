package org.jawroom.tables.schema;

/** The type of the cells in a column. */
public enum CellKind {
  NAME("a name"),
  TEXT("free text"),
  WORD("one of the words given"),
  UNIT("mm, cm, m or in"),
  AXES("letters out of x, y, z, or none"),
  CARRIER("frame, saddle, head, table, or letters out of x, y, z"),
  TURNS("turns out of front, right, rear, left"),
  LIST("words, ; between"),
  LENGTH("a length"),
  SIZE("a length, 0 or more"),
  POSITIVE_SIZE("a length above 0"),
  LENGTHS("lengths, ; between, rising"),
  ANGLES("angles in degrees below 90, ; between"),
  COUNT("a whole number, 0 or more"),
  MASS("a mass in kg or lb"),
  NUMBER("a number, 0 or more"),
  PRICE("a price without currency, above 0");

  private final String words;

  CellKind(String words) {
    this.words = words;
  }

  /** The content of such a cell, in words for people. */
  public String words() {
    return words;
  }

  /** Whether the cell can only hold a number without unit. */
  public boolean isPlainNumber() {
    return this == COUNT || this == NUMBER || this == PRICE;
  }

  /** Whether a bare number in the cell is a length whose unit comes from elsewhere. */
  public boolean isLength() {
    return this == LENGTH || this == SIZE || this == POSITIVE_SIZE || this == LENGTHS;
  }
}
