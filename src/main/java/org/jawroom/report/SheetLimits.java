package org.jawroom.report;

/**
 * How much a sheet holds.
 *
 * @param rows and {@code columns} of a sheet
 * @param links hyperlinks of a sheet
 */
record SheetLimits(int rows, int columns, int links) {

  /** Those of XLSX as spreadsheets read it. */
  static final SheetLimits XLSX = new SheetLimits(1_048_576, 16_384, 65_530);
}
