package org.jawroom.report.xlsx;

import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Row;
import org.jawroom.report.format.PlainText;

/**
 * Fills cells. Text is only ever set as text, so that nothing from a table can become a formula.
 */
public final class Cells {
  private Cells() {}

  public static Cell text(Row row, int column, String text, CellStyle style) {
    Cell cell = row.createCell(column);
    cell.setCellStyle(style);
    cell.setCellValue(PlainText.forCell(text));
    return cell;
  }

  public static Cell number(Row row, int column, double value, CellStyle style) {
    Cell cell = row.createCell(column);
    cell.setCellStyle(style);
    cell.setCellValue(value);
    return cell;
  }

  static Cell empty(Row row, int column, CellStyle style) {
    Cell cell = row.createCell(column);
    cell.setCellStyle(style);
    return cell;
  }
}
