package org.jawroom.report.xlsx;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.util.CellRangeAddress;
import org.jawroom.report.format.TextLines;

/**
 * A remark above a table. It wraps within columns of the table, since a line that ran past them
 * would widen the printed page, and all on it would shrink.
 */
public final class Remark {

  /** So many characters of 10 points across are read with ease, and need no scrolling. */
  static final int WIDTH = 110;

  private static final int POINTS = 9;

  /** By how much a remark stands closer than rows of running text, in points. */
  private static final int CLOSER = 4;

  private Remark() {}

  /**
   * Writes a remark and sets the height of its row, at least {@code least} points.
   *
   * @param first the column in which it begins; it takes as many as make {@link #WIDTH}, or all
   * @param widths of the table's columns in characters
   */
  public static void write(
      Row row, int first, List<Integer> widths, String text, Styles styles, int least) {
    int end = first;
    int width = 0;
    while (end < widths.size() && width < WIDTH) {
      width += widths.get(end++);
    }
    int lines = TextLines.count(text, TextLines.perLine(width, POINTS));
    row.setHeightInPoints(Math.max(least, Styles.height(lines, POINTS) - CLOSER));
    Cells.text(row, first, text, styles.remark());
    if (end - first > 1) {
      row.getSheet()
          .addMergedRegionUnsafe(
              new CellRangeAddress(row.getRowNum(), row.getRowNum(), first, end - 1));
    }
  }

  /**
   * The widths of a column of {@code head} characters and {@code count} columns of {@code each}.
   */
  public static List<Integer> widths(int head, int each, int count) {
    List<Integer> widths = new ArrayList<>(Collections.nCopies(count + 1, each));
    widths.set(0, head);
    return widths;
  }
}
