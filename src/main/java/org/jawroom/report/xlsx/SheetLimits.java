package org.jawroom.report.xlsx;

/**
 * How much a sheet holds.
 *
 * @param rows and {@code columns} of a sheet
 * @param links hyperlinks of a sheet
 * @param cells of a sheet that people are to look at
 */
public record SheetLimits(int rows, int columns, int links, int cells) {

  /** What spreadsheets still open within seconds, and people still find their way about in. */
  private static final int CELLS = 2_000_000;

  /** Those of XLSX as spreadsheets read it. */
  public static final SheetLimits XLSX = new SheetLimits(1_048_576, 16_384, 65_530);

  public SheetLimits(int rows, int columns, int links) {
    this(rows, columns, links, CELLS);
  }
}
