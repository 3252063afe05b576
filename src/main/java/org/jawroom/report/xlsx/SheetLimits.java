package org.jawroom.report.xlsx;

/**
 * The capacity of a sheet.
 *
 * @param rows of a sheet
 * @param columns of a sheet
 * @param links hyperlinks of a sheet
 * @param cells of a sheet that people look at
 */
public record SheetLimits(int rows, int columns, int links, int cells) {

  /** What spreadsheets open within seconds and people can still navigate. */
  private static final int CELLS = 2_000_000;

  /** The limits of XLSX in common spreadsheets. */
  public static final SheetLimits XLSX = new SheetLimits(1_048_576, 16_384, 65_530);

  public SheetLimits(int rows, int columns, int links) {
    this(rows, columns, links, CELLS);
  }
}
