package org.jawroom.tables.template;

import java.util.List;
import java.util.Map;
import org.apache.poi.ss.usermodel.IgnoredErrorType;
import org.apache.poi.ss.usermodel.PageMargin;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.jawroom.tables.schema.CellKind;
import org.jawroom.tables.schema.ColumnSpec;
import org.jawroom.tables.schema.TableSpec;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTCol;

/**
 * The sheet of one table: headings, worked rows, and the rest of the columns in a collapsed group.
 */
final class TemplateSheet {

  /** The number of rows with drop-down lists. */
  static final int ROWS = 500;

  /** Of the letters' 10 points. */
  private static final short PRINT_PERCENT = 80;

  /** Characters across a landscape page of A4 or Letter at that size; another font may be wider. */
  private static final int PRINT_WIDTH = 145;

  private TemplateSheet() {}

  static void add(XSSFWorkbook workbook, TemplateStyles styles, TableSpec table) {
    XSSFSheet sheet = workbook.createSheet(table.tableName());
    ColumnOrder order = ColumnOrder.of(table);
    List<ColumnSpec> columns = order.all();
    XSSFRow headings = sheet.createRow(0);
    headings.setHeightInPoints(48);
    for (int at = 0; at < columns.size(); at++) {
      ColumnSpec column = columns.get(at);
      sheet.setColumnWidth(at, width(column) * 256);
      sheet.setDefaultColumnStyle(at, styles.entry(column.kind()));
      XSSFCell heading = headings.createCell(at);
      heading.setCellValue(heading(column));
      heading.setCellStyle(styles.heading(column.need()));
      TemplateChoices.add(sheet, table, column, at);
    }
    TemplateComments.add(sheet, order);
    rows(sheet, styles, columns, WorkedRows.of(table), table != TableSpec.SETTINGS);
    groupShut(sheet, order.everyone().size(), columns.size());
    sheet.createFreezePane(1, 1);
    sheet.addIgnoredErrors(
        new CellRangeAddress(0, ROWS, 0, columns.size() - 1),
        IgnoredErrorType.NUMBER_STORED_AS_TEXT);
    print(sheet, order.everyone());
  }

  /**
   * Sets up pages that can be read: letters of 8 points, the columns in sight spread evenly over as
   * many pages as they need, with names and headings on each.
   */
  private static void print(XSSFSheet sheet, List<ColumnSpec> shown) {
    sheet.getPrintSetup().setLandscape(true);
    sheet.getPrintSetup().setScale(PRINT_PERCENT);
    sheet.setMargin(PageMargin.LEFT, 0.4);
    sheet.setMargin(PageMargin.RIGHT, 0.4);
    sheet.setPrintGridlines(true);
    sheet.setRepeatingRows(new CellRangeAddress(0, 0, -1, -1));
    sheet.setRepeatingColumns(new CellRangeAddress(-1, -1, 0, 0));
    sheet.getFooter().setRight("&8&A, page &P of &N");
    int name = width(shown.get(0));
    int rest = shown.stream().mapToInt(TemplateSheet::width).sum() - name;
    int pages = (rest - 1) / (PRINT_WIDTH - name) + 1;
    int done = 0;
    for (int at = 1, page = 1; at < shown.size() && page < pages; at++) {
      done += width(shown.get(at));
      if (done * pages >= rest * page) {
        sheet.setColumnBreak(at);
        page++;
      }
    }
  }

  /**
   * Written directly: the library's grouping writes overlapping column elements if each column has
   * its own width.
   */
  private static void groupShut(XSSFSheet sheet, int from, int to) {
    if (from == to) {
      return;
    }
    for (int at = from; at < to; at++) {
      CTCol column = sheet.getColumnHelper().getColumn(at, false);
      column.setOutlineLevel((short) 1);
      column.setHidden(true);
    }
    sheet.setColumnWidth(to, 10 * 256);
    sheet.getColumnHelper().getColumn(to, false).setCollapsed(true);
    sheet.getCTWorksheet().getSheetFormatPr().setOutlineLevelCol((short) 1);
  }

  /** With spaces between words, so that headings wrap; the reader accepts any word separator. */
  private static String heading(ColumnSpec column) {
    return column.name().replace('_', ' ');
  }

  private static void rows(
      XSSFSheet sheet,
      TemplateStyles styles,
      List<ColumnSpec> columns,
      List<Map<String, String>> rows,
      boolean worked) {
    for (Map<String, String> values : rows) {
      XSSFRow row = sheet.createRow(sheet.getLastRowNum() + 1);
      for (int at = 0; at < columns.size(); at++) {
        String value = values.getOrDefault(columns.get(at).name(), "");
        if (!value.isEmpty()) {
          XSSFCell cell = row.createCell(at);
          cell.setCellValue(value);
          cell.setCellStyle(worked ? styles.worked() : styles.entry(columns.get(at).kind()));
        }
      }
    }
  }

  /** In characters: enough for the content and for the longest word of the heading. */
  private static int width(ColumnSpec column) {
    int least =
        switch (column.kind()) {
          case NAME -> 24;
          case TEXT, LIST, LENGTHS -> 26;
          case TURNS -> 16;
          default -> 10;
        };
    for (String word : heading(column).split(" ")) {
      least = Math.max(least, word.length() + 3);
    }
    return column.kind() == CellKind.WORD ? Math.max(least, 12) : least;
  }
}
