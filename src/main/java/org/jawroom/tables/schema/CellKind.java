package org.jawroom.tables.schema;

/** What sort of thing stands in the cells of a column. */
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
  COUNT("a whole number, 0 or more"),
  MASS("a mass in kg or lb"),
  NUMBER("a number, 0 or more"),
  PRICE("a price without currency, above 0");

  private final String words;

  CellKind(String words) {
    this.words = words;
  }

  /** For people: what a cell of this kind holds. */
  public String words() {
    return words;
  }

  /** Whether nothing but a number without unit can stand in it. */
  public boolean isPlainNumber() {
    return this == COUNT || this == NUMBER || this == PRICE;
  }

  /** Whether a bare number in it is a length and takes a unit from elsewhere. */
  public boolean isLength() {
    return this == LENGTH || this == SIZE || this == POSITIVE_SIZE || this == LENGTHS;
  }
}
