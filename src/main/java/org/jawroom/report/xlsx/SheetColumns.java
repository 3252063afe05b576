package org.jawroom.report.xlsx;

import org.apache.poi.xssf.streaming.SXSSFSheet;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTCol;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTCols;

/** Sets column widths of a sheet with hundreds of columns. */
public final class SheetColumns {
  private SheetColumns() {}

  /**
   * Makes the first column {@code head} characters wide and each further one through {@code last}
   * {@code width}, as a single element of the file. Setting columns one by one takes quadratic time
   * in the library.
   */
  public static void widths(SXSSFSheet sheet, int head, int width, int last) {
    sheet.setColumnWidth(0, head * 256);
    if (last < 1) {
      return;
    }
    CTCols columns =
        sheet
            .getWorkbook()
            .getXSSFWorkbook()
            .getSheet(sheet.getSheetName())
            .getCTWorksheet()
            .getColsArray(0);
    CTCol others = columns.addNewCol();
    others.setMin(2);
    others.setMax(last + 1L);
    others.setWidth(width);
    others.setCustomWidth(true);
  }
}
