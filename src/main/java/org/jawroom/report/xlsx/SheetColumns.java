package org.jawroom.report.xlsx;

import org.apache.poi.xssf.streaming.SXSSFSheet;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTCol;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTCols;

/** How wide the columns of a sheet with hundreds of them are. */
public final class SheetColumns {
  private SheetColumns() {}

  /**
   * Makes the first column {@code head} characters wide, and each after it up to {@code last}
   * {@code width}: as the one entry of the file that it is. Column by column the library would look
   * through all before each.
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
