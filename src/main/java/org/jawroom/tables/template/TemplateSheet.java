package org.jawroom.tables.template;

import java.util.List;
import java.util.Map;
import org.apache.poi.ss.usermodel.IgnoredErrorType;
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
    sheet.getPrintSetup().setLandscape(true);
    sheet.setFitToPage(true);
    sheet.getPrintSetup().setFitHeight((short) 0);
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
