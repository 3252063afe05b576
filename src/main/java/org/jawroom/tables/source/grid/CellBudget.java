package org.jawroom.tables.source.grid;

/** The memory budget for the cells of an input, all tables together. */
public final class CellBudget {

  /** Many times what tables with the longest names need. */
  private static final int MOST_LETTERS = 64 << 20;

  /** The memory overhead of a cell, expressed in letters. */
  private static final int EACH = 64;

  public static final String FULL =
      "is beyond the million cells that all tables may have together; split them";

  private int left = MOST_LETTERS;

  /** Takes the cell's size from the budget; false if it is exhausted. */
  public boolean take(Cell cell) {
    left -= Math.min(left + 1, cell.text().length() + EACH);
    return left >= 0;
  }
}
