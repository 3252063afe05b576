package org.jawroom.tables.template;

import java.util.List;
import java.util.Set;
import org.apache.poi.ss.usermodel.PageMargin;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.util.Units;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFDrawing;
import org.apache.poi.xssf.usermodel.XSSFPicture;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.jawroom.tables.schema.ColumnSpec;
import org.jawroom.tables.schema.Need;
import org.jawroom.tables.schema.TableSpec;
import org.jawroom.tables.template.sketch.GapSketch;
import org.jawroom.tables.template.sketch.MillSketch;
import org.jawroom.tables.template.sketch.TableSketch;
import org.jawroom.tables.template.sketch.ViseSketch;
import org.openxmlformats.schemas.drawingml.x2006.main.CTPositiveSize2D;
import org.openxmlformats.schemas.drawingml.x2006.spreadsheetDrawing.CTDrawing;
import org.openxmlformats.schemas.drawingml.x2006.spreadsheetDrawing.CTOneCellAnchor;

/** The sheet that explains the others: how to fill in, the colours, the sketches, every column. */
final class LegendSheet {
  static final String NAME = "legend";

  private static final int ROW_HEIGHT = 20;

  private static final List<String> HOW =
      List.of(
          "One row for each mill in machines, one for each kind of vise in vises. The columns in sight are"
              + " the ones everyone needs; the + above a sheet opens the rest.",
          "A blank length is unknown, never zero: what needs it stays unknown until somebody measures it."
              + " Write none where there is nothing to measure.",
          "A length is a number with or without its unit: 165, 165 mm, 16.5 cm, 6 1/2 in, 6-1/2\", 1/4. A"
              + " bare number is in the unit of its own row.",
          "Rest the pointer on a heading to see what to measure and how. Grey rows whose names begin with"
              + " e.g. are examples: they are skipped, and may be deleted.",
          "When in doubt, take the number that leaves less room.");

  private final XSSFSheet sheet;
  private final TemplateStyles styles;
  private int next;

  private LegendSheet(XSSFSheet sheet, TemplateStyles styles) {
    this.sheet = sheet;
    this.styles = styles;
  }

  static void add(XSSFWorkbook workbook, TemplateStyles styles) {
    XSSFSheet sheet = workbook.createSheet(NAME);
    sheet.setDisplayGridlines(false);
    sheet.setDefaultRowHeightInPoints(15);
    sheet.setColumnWidth(0, 13 * 256);
    sheet.setColumnWidth(1, 25 * 256);
    sheet.setColumnWidth(2, 36 * 256);
    sheet.setColumnWidth(3, 60 * 256);
    LegendSheet legend = new LegendSheet(sheet, styles);
    legend.words();
    legend.colours();
    legend.sketches(workbook);
    legend.columns();
    sheet.setFitToPage(true);
    sheet.getPrintSetup().setFitHeight((short) 0);
    sheet.setMargin(PageMargin.LEFT, 0.4);
    sheet.setMargin(PageMargin.RIGHT, 0.4);
    sheet.setMargin(PageMargin.TOP, 0.3);
    sheet.setMargin(PageMargin.BOTTOM, 0.3);
  }

  private void words() {
    XSSFRow title = row(28);
    put(title, 0, styles.title(), "How to fill in these tables");
    for (String line : HOW) {
      XSSFRow row = row(18);
      put(row, 0, styles.words(), line);
      sheet.addMergedRegion(new CellRangeAddress(row.getRowNum(), row.getRowNum(), 0, 3));
    }
  }

  private void colours() {
    row(8);
    colour(Need.REQUIRED, "must be filled");
    colour(Need.UNKNOWN_IF_BLANK, "measure it; left blank, it is unknown");
    colour(Need.OPTIONAL, "may stay blank: the heading's comment says what that means");
    row(8);
  }

  private void colour(Need need, String meaning) {
    XSSFRow row = row(18);
    put(row, 0, styles.heading(need), "heading");
    put(row, 1, styles.words(), meaning);
    sheet.addMergedRegion(new CellRangeAddress(row.getRowNum(), row.getRowNum(), 1, 3));
  }

  private void sketches(XSSFWorkbook workbook) {
    picture(workbook, GapSketch.plan(Set.of()), GapSketch.WIDTH, GapSketch.HEIGHT);
    picture(workbook, MillSketch.side(Set.of()), MillSketch.WIDTH, MillSketch.HEIGHT);
    sheet.setRowBreak(next - 1);
    picture(workbook, TableSketch.plan(Set.of()), TableSketch.WIDTH, TableSketch.HEIGHT);
    picture(workbook, ViseSketch.side(Set.of()), ViseSketch.WIDTH, ViseSketch.SIDE_HEIGHT);
    picture(workbook, ViseSketch.plan(Set.of()), ViseSketch.WIDTH, ViseSketch.PLAN_HEIGHT);
  }

  /** Anchored at one corner only, so that no program's column widths stretch it. */
  private void picture(XSSFWorkbook workbook, byte[] png, int width, int height) {
    int index = workbook.addPicture(png, XSSFWorkbook.PICTURE_TYPE_PNG);
    XSSFDrawing drawing = sheet.createDrawingPatriarch();
    XSSFClientAnchor cells = new XSSFClientAnchor(0, 0, 0, 0, 0, next, 1, next + 1);
    XSSFPicture picture = drawing.createPicture(cells, index);
    CTDrawing shapes = drawing.getCTDrawing();
    CTOneCellAnchor anchor = shapes.addNewOneCellAnchor();
    anchor.setFrom(cells.getFrom());
    CTPositiveSize2D size = anchor.addNewExt();
    size.setCx((long) width * Units.EMU_PER_PIXEL);
    size.setCy((long) height * Units.EMU_PER_PIXEL);
    anchor.setPic(picture.getCTPicture());
    anchor.addNewClientData();
    shapes.removeTwoCellAnchor(shapes.sizeOfTwoCellAnchorArray() - 1);
    next += height / ROW_HEIGHT + 2;
  }

  private void columns() {
    sheet.setRowBreak(next - 1);
    XSSFRow title = row(28);
    put(title, 0, styles.title(), "Every column");
    for (TableSpec table : TableSpec.values()) {
      row(8);
      XSSFRow heading = row(20);
      List<String> headings =
          List.of(table.tableName(), "column", "what stands in it", table.help());
      for (int at = 0; at < headings.size(); at++) {
        put(heading, at, styles.heading(Need.OPTIONAL), headings.get(at));
      }
      for (ColumnSpec column : ColumnOrder.of(table).all()) {
        String cell = TemplateComments.cell(column);
        int lines = Math.max(cell.length() / 38, column.help().length() / 64) + 1;
        XSSFRow row = row(14 * lines + 3);
        put(row, 0, styles.listed(), "");
        put(row, 1, styles.listed(), column.name());
        put(row, 2, styles.listed(), cell);
        put(row, 3, styles.listed(), column.help());
      }
    }
  }

  private XSSFRow row(int points) {
    XSSFRow row = sheet.createRow(next++);
    row.setHeightInPoints(points);
    return row;
  }

  private static void put(XSSFRow row, int at, XSSFCellStyle style, String text) {
    XSSFCell cell = row.createCell(at);
    cell.setCellValue(text);
    cell.setCellStyle(style);
  }
}
