package org.jawroom.tables.source;

/** How much of an input is kept: all of its cells, of all tables together. */
final class CellBudget {

  /** What tables may have of the longest names, many times over. */
  private static final int MOST_LETTERS = 64 << 20;

  /** What a cell takes besides its letters, reckoned in letters. */
  private static final int EACH = 64;

  static final String FULL =
      "is beyond the million cells that all tables may have together; split them";

  private int left = MOST_LETTERS;

  /** Whether there is room for one more cell. */
  boolean take(Cell cell) {
    left -= Math.min(left + 1, cell.text().length() + EACH);
    return left >= 0;
  }
}
