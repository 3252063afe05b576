package org.jawroom.report.xlsx;

import java.util.List;
import java.util.OptionalLong;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.streaming.SXSSFSheet;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;
import org.jawroom.report.format.Rounding;
import org.jawroom.report.format.TextLines;

/**
 * A long table: title, remark, header row that stays visible and can be filtered by, entries. A
 * second table may follow below in the same columns; header rows then scroll with their entries.
 */
public final class ListSheet {

  /** A column: its heading and its width in characters. */
  public record Heading(String words, int width) {}

  /** The row of the first entry. */
  public static final int FIRST_ENTRY = 3;

  private static final int HEADINGS = FIRST_ENTRY - 1;
  private static final int POINTS = 9;

  /** By how much entries stand closer than other rows, in points. */
  private static final int CLOSER = 4;

  private final SXSSFSheet sheet;
  private final Styles styles;
  private final List<Heading> headings;
  private final int headColumns;
  private Row row;
  private int nextRow = FIRST_ENTRY;
  private int nextColumn;
  private int lines;
  private int filtered = -1;

  public ListSheet(
      SXSSFWorkbook book, Styles styles, String name, List<Heading> headings, int headColumns) {
    this(book, styles, name, headings, headColumns, true);
  }

  /**
   * Starts a sheet without entries.
   *
   * @param inSight whether the header row stays visible and is printed on every page; false if a
   *     second table with its own header row follows
   */
  public ListSheet(
      SXSSFWorkbook book,
      Styles styles,
      String name,
      List<Heading> headings,
      int headColumns,
      boolean inSight) {
    this.sheet = book.createSheet(name);
    this.styles = styles;
    this.headings = headings;
    this.headColumns = headColumns;
    int width = headings.stream().mapToInt(Heading::width).sum();
    int repeated = inSight ? HEADINGS : -1;
    Paper.set(sheet, styles.unit(), repeated, repeated, headColumns, width);
    sheet.createFreezePane(headColumns, inSight ? FIRST_ENTRY : 0);
    for (int column = 0; column < headings.size(); column++) {
      sheet.setColumnWidth(column, headings.get(column).width() * 256);
    }
  }

  /** The number of entries that a sheet holds. */
  public static int room(SheetLimits limits) {
    return limits.rows() - FIRST_ENTRY;
  }

  /**
   * Writes the head of a list of {@code entries}, and ahead of the remark that only the first fit,
   * if so.
   *
   * @param complete the file that has them all; empty if none has
   * @return the entries that fit on the sheet
   */
  public <T> List<T> head(
      String title, List<T> entries, SheetLimits limits, String complete, String remark) {
    int shown = Math.min(entries.size(), room(limits));
    head(title, cut(shown, entries.size(), complete) + remark);
    return entries.subList(0, shown);
  }

  /** Says that only the first {@code shown} of {@code all} are listed; empty if all are. */
  public static String cut(int shown, int all, String complete) {
    String elsewhere = complete.isEmpty() ? ". " : "; " + complete + " HAS THEM ALL. ";
    return shown == all
        ? ""
        : "ONLY THE FIRST " + shown + " OF " + all + " FIT ON THIS SHEET" + elsewhere;
  }

  /** Writes title, remark and header row; call it before any entry. */
  public void head(String title, String remark) {
    Row top = sheet.createRow(0);
    top.setHeightInPoints(24);
    Cells.text(top, 0, title, styles.title());
    remark(1, remark);
    headings(HEADINGS, headings.stream().map(Heading::words).toList());
  }

  private void remark(int index, String remark) {
    List<Integer> widths = headings.stream().map(Heading::width).toList();
    // Where one scrolls sideways, to the right of the repeated columns, which would cut it off.
    boolean isNarrow = widths.stream().mapToInt(Integer::intValue).sum() <= Remark.WIDTH;
    int first = isNarrow ? 0 : headColumns;
    Remark.write(sheet.createRow(index), first, widths, remark, styles, 15);
  }

  /** Ends the first table, whose header row alone has filters, and starts the second. */
  public void below(String title, String remark, List<String> words) {
    endEntry();
    row = null;
    filtered = lastRow();
    // An empty row separates the two.
    Row top = sheet.createRow(nextRow + 1);
    top.setHeightInPoints(20);
    Cells.text(top, 0, title, styles.section());
    remark(nextRow + 2, remark);
    headings(nextRow + 3, words);
    nextRow += 4;
  }

  private void headings(int index, List<String> words) {
    Row third = sheet.createRow(index);
    int most = 1;
    for (int column = 0; column < words.size(); column++) {
      Cells.text(third, column, words.get(column), styles.heading());
      // The filter button covers part of the last line.
      int perLine = TextLines.perLine(headings.get(column).width() - 2, POINTS);
      most = Math.max(most, TextLines.count(words.get(column), perLine) + 1);
    }
    third.setHeightInPoints(Styles.height(most, POINTS));
  }

  public void entry() {
    endEntry();
    row = sheet.createRow(nextRow++);
    nextColumn = 0;
    lines = 1;
  }

  public Cell text(String text) {
    return text(text, styles.entry());
  }

  public Cell text(String text, CellStyle style) {
    int perLine = TextLines.perLine(headings.get(nextColumn).width() - 2, POINTS);
    lines = Math.max(lines, TextLines.count(text, perLine));
    return text.isEmpty()
        ? Cells.empty(row, nextColumn++, style)
        : Cells.text(row, nextColumn++, text, style);
  }

  public Cell length(OptionalLong length, Rounding rounding) {
    return length(length, rounding, styles.length());
  }

  public Cell length(OptionalLong length, Rounding rounding, CellStyle style) {
    return length.isPresent()
        ? Cells.number(row, nextColumn++, styles.unit().number(length.getAsLong(), rounding), style)
        : Cells.empty(row, nextColumn++, style);
  }

  public Cell length(long length, Rounding rounding) {
    return length(OptionalLong.of(length), rounding);
  }

  /** Ten times finer. */
  public Cell fineLength(OptionalLong length, Rounding rounding) {
    return length.isPresent()
        ? Cells.number(
            row,
            nextColumn++,
            styles.unit().fineNumber(length.getAsLong(), rounding),
            styles.fineLength())
        : Cells.empty(row, nextColumn++, styles.fineLength());
  }

  public Cell number(double number, String format) {
    return Cells.number(row, nextColumn++, number, styles.number(format));
  }

  public void blank(int cells) {
    for (int i = 0; i < cells; i++) {
      Cells.empty(row, nextColumn++, styles.entry());
    }
  }

  /** Ends the last entry and adds filters to the first table's header row. */
  public void finish() {
    endEntry();
    int last = filtered < 0 ? lastRow() : filtered;
    sheet.setAutoFilter(new CellRangeAddress(HEADINGS, last, 0, headings.size() - 1));
  }

  private int lastRow() {
    return Math.max(nextRow - 1, HEADINGS);
  }

  private void endEntry() {
    if (row != null) {
      row.setHeightInPoints(Styles.height(lines, POINTS) - CLOSER);
    }
  }
}
