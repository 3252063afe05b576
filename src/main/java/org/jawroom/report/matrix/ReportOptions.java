package org.jawroom.report.matrix;

/**
 * Selects what a run writes.
 *
 * @param header whether the CSV files have a header row; false for a later part of a partial run
 * @param remedies whether to write the remedies of each pairing: {@code remedies.csv}, {@code
 *     unknowns.csv} and the number of vises on one table
 * @param workbook whether to write {@code matrix.xlsx}
 * @param drawings the largest number of drawings in the workbook; 0 for none
 */
public record ReportOptions(boolean header, boolean remedies, boolean workbook, int drawings) {

  /**
   * The largest number of pairings that the workbook lists in full: what people can look through
   * and spreadsheets open at once.
   */
  public static final long DETAILED = 20_000;

  /** Everything but drawings. */
  public static final ReportOptions ALL = new ReportOptions(true, true, true, 0);

  public ReportOptions {
    if (drawings < 0) {
      throw new IllegalArgumentException("negative number of drawings: " + drawings);
    }
  }
}
