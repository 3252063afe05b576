package org.jawroom.report;

import java.util.List;
import java.util.OptionalLong;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.streaming.SXSSFSheet;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;

/** A long table: title, remark, headings that stay in sight and can be filtered by, entries. */
final class ListSheet {

  /** A column: its heading, and how wide it is in characters. */
  record Heading(String words, int width) {}

  /** The row of the first entry. */
  static final int FIRST_ENTRY = 3;

  private static final int HEADINGS = FIRST_ENTRY - 1;
  private static final int POINTS = 9;

  private final SXSSFSheet sheet;
  private final Styles styles;
  private final List<Heading> headings;
  private final int headColumns;
  private Row row;
  private int nextRow = FIRST_ENTRY;
  private int nextColumn;
  private int lines;

  ListSheet(SXSSFWorkbook book, Styles styles, String name, List<Heading> headings, int headColumns) {
    this.sheet = book.createSheet(name);
    this.styles = styles;
    this.headings = headings;
    this.headColumns = headColumns;
    int width = headings.stream().mapToInt(Heading::width).sum();
    Paper.set(sheet, styles.unit(), HEADINGS, HEADINGS, headColumns, width);
    sheet.createFreezePane(headColumns, FIRST_ENTRY);
    for (int column = 0; column < headings.size(); column++) {
      sheet.setColumnWidth(column, headings.get(column).width() * 256);
    }
  }

  /** Title, remark and headings; before any entry. */
  void head(String title, String remark) {
    Row top = sheet.createRow(0);
    top.setHeightInPoints(24);
    Cells.text(top, 0, title, styles.title());
    Row second = sheet.createRow(1);
    second.setHeightInPoints(15);
    // Beside the columns that are repeated, which would cut it off.
    Cells.text(second, headColumns, remark, styles.note());
    Row third = sheet.createRow(HEADINGS);
    int most = 1;
    for (int column = 0; column < headings.size(); column++) {
      Heading heading = headings.get(column);
      Cells.text(third, column, heading.words(), styles.heading());
      // The filter's button takes some of the last line.
      int perLine = TextLines.perLine(heading.width() - 2, POINTS);
      most = Math.max(most, TextLines.count(heading.words(), perLine) + 1);
    }
    third.setHeightInPoints(Styles.height(most, POINTS));
  }

  void entry() {
    endEntry();
    row = sheet.createRow(nextRow++);
    nextColumn = 0;
    lines = 1;
  }

  Cell text(String text) {
    return text(text, styles.entry());
  }

  Cell text(String text, CellStyle style) {
    int perLine = TextLines.perLine(headings.get(nextColumn).width() - 2, POINTS);
    lines = Math.max(lines, TextLines.count(text, perLine));
    return text.isEmpty()
        ? Cells.empty(row, nextColumn++, style)
        : Cells.text(row, nextColumn++, text, style);
  }

  Cell length(OptionalLong length, Rounding rounding) {
    return Cells.length(row, nextColumn++, length, rounding, styles);
  }

  Cell length(long length, Rounding rounding) {
    return length(OptionalLong.of(length), rounding);
  }

  Cell number(double number, String format) {
    return Cells.number(row, nextColumn++, number, styles.number(format));
  }

  void blank(int cells) {
    for (int i = 0; i < cells; i++) {
      Cells.empty(row, nextColumn++, styles.entry());
    }
  }

  /** Ends the last entry and makes the headings filters. */
  void finish() {
    endEntry();
    int last = Math.max(nextRow - 1, HEADINGS);
    sheet.setAutoFilter(new CellRangeAddress(HEADINGS, last, 0, headings.size() - 1));
  }

  private void endEntry() {
    if (row != null) {
      row.setHeightInPoints(Styles.height(lines, POINTS));
    }
  }
}
