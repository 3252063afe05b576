package org.jawroom.report.matrix;

import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.jawroom.report.wording.Finding;
import org.jawroom.report.wording.Words;
import org.jawroom.report.xlsx.Cells;
import org.jawroom.report.xlsx.Palette;
import org.jawroom.report.xlsx.Styles;

/** The key to the signs, above the matrix. */
final class MatrixKey {

  /** Its number of columns after the first. */
  static final int COLUMNS = 5;

  private MatrixKey() {}

  /**
   * Writes two rows starting at {@code first}.
   *
   * @param close whether the key includes close margins
   */
  static void write(Sheet sheet, int first, Styles styles, boolean close) {
    Row upper = sheet.createRow(first);
    Row lower = sheet.createRow(first + 1);
    upper.setHeightInPoints(Styles.height(3, 8));
    lower.setHeightInPoints(Styles.height(3, 8));
    Cells.text(upper, 0, "Signs", styles.label());
    finding(upper, 1, Finding.CLEAR, styles);
    if (close) {
      String words =
          ExtraClearance.CLOSE_SIGN + " close: " + ExtraClearance.closeRange(styles.unit());
      Cells.text(upper, 2, words, styles.key(Palette.CLOSE));
    }
    finding(upper, 3, Finding.LIMITED, styles);
    finding(upper, 4, Finding.MEASURE, styles);
    Cells.text(upper, 5, "► and a heavy frame: the best vise of this machine", styles.keyBest());
    finding(lower, 1, Finding.NO_PLACE, styles);
    finding(lower, 2, Finding.NO_MOUNT, styles);
    finding(lower, 3, Finding.UNKNOWN, styles);
    Cells.text(
        lower,
        4,
        "/// " + Words.signed(Finding.NOTHING_LISTED),
        styles.key(Finding.NOTHING_LISTED));
    Cells.text(
        lower,
        5,
        ExtraClearance.SHORT_SIGN + " less than the extra clearance wanted",
        styles.key(Palette.SHORT));
  }

  private static void finding(Row row, int column, Finding finding, Styles styles) {
    Cells.text(row, column, Words.signed(finding), styles.key(finding));
  }
}
