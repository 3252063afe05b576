package org.jawroom.report.xlsx;

import java.util.List;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.streaming.SXSSFSheet;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;
import org.jawroom.report.format.TextLines;
import org.jawroom.report.wording.Cautions;

/** The sheet <i>Cautions</i>: the limits of what the figures state. */
public final class CautionsSheet {
  static final String NAME = "Cautions";

  private static final int WIDTH = 120;
  private static final int POINTS = 10;

  private CautionsSheet() {}

  public static void add(SXSSFWorkbook book, Styles styles) {
    add(book, styles, List.of());
  }

  /** {@code more}: further cautions for this workbook. */
  public static void add(SXSSFWorkbook book, Styles styles, List<String> more) {
    SXSSFSheet sheet = book.createSheet(NAME);
    sheet.setColumnWidth(0, 5 * 256);
    sheet.setColumnWidth(1, WIDTH * 256);
    Paper.set(sheet, styles.unit(), -1, -1, 0, WIDTH + 5);
    int next = 0;
    Row top = sheet.createRow(next++);
    top.setHeightInPoints(28);
    Cells.text(top, 0, "Cautions", styles.title());
    int number = 1;
    for (String caution : Stream.concat(Cautions.ALL.stream(), more.stream()).toList()) {
      Row row = sheet.createRow(next++);
      int lines = TextLines.count(caution, TextLines.perLine(WIDTH, POINTS));
      row.setHeightInPoints(Styles.height(lines, POINTS) + 6);
      Cells.text(row, 0, number++ + ".", styles.prose());
      Cells.text(row, 1, caution, styles.prose());
    }
  }
}
