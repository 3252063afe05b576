package org.jawroom.report.matrix;

/**
 * What a run is to write.
 *
 * @param header whether the CSV files begin with one; not where they go on from another part's
 * @param remedies whether it is known what to do about each pairing: {@code remedies.csv}, {@code
 *     unknowns.csv}, and how many stand on one table
 * @param workbook whether to write {@code matrix.xlsx}
 * @param drawings how many pairings the workbook draws at most; 0 for none
 */
public record ReportOptions(boolean header, boolean remedies, boolean workbook, int drawings) {

  /**
   * Up to how many pairings the workbook tells each in full. What people can look through, and what
   * spreadsheets open at once.
   */
  public static final long DETAILED = 20_000;

  /** Everything but drawings. */
  public static final ReportOptions ALL = new ReportOptions(true, true, true, 0);

  public ReportOptions {
    if (drawings < 0) {
      throw new IllegalArgumentException(drawings + " drawings");
    }
  }
}
