package org.jawroom.tables.source.grid;

/** The memory budget for the cells of an input, all tables together. */
public final class CellBudget {

  /** The caller does not say what Java has: the budget is that of a million cells. */
  public static final long UNKNOWN_HEAP = 0;

  private static final long MB = 1_000_000;
  private static final long GIB = 1L << 30;

  /** A cell of a CSV file, read and turned into its part of a shop: 350 bytes, rounded up. */
  private static final long EACH = 400;

  /** A million cells with short texts. */
  static final long LEAST = 1_000_000 * (EACH + 16);

  private final long heap;
  private final long most;
  private long held;
  private long taken;

  /**
   * @param heap the most memory that Java has, in bytes; a quarter of it is left for other things
   */
  public CellBudget(long heap) {
    this.heap = heap;
    this.most = Math.max(LEAST, heap / 4 * 3);
  }

  public long heap() {
    return heap;
  }

  /** Takes the cell's size from the budget; false if it is exhausted. */
  public boolean take(Cell cell) {
    long size = EACH + 2L * cell.text().length();
    if (size > most - taken) {
      taken = most;
      return false;
    }
    taken += size;
    held++;
    return true;
  }

  /** Why nothing more is read, and the smaller step; continues the name of a row or an input. */
  public String full() {
    String given = heap == UNKNOWN_HEAP ? "" : "; Java has " + heap / MB + " MB";
    return "does not fit into memory: "
        + held
        + " cells are held, which take about "
        + (taken + MB - 1) / MB
        + " MB when read"
        + given
        + "; give it more, as java -Xmx"
        + (2 * (Math.max(taken, heap) / GIB) + 2)
        + "g -jar jawroom.jar, or cut the tables into parts, each with some of the machines";
  }
}
