package org.jawroom.report.matrix;

import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.jawroom.report.format.TextLines;
import org.jawroom.report.wording.Finding;
import org.jawroom.report.wording.Words;
import org.jawroom.report.xlsx.Cells;
import org.jawroom.report.xlsx.Palette;
import org.jawroom.report.xlsx.Styles;
import org.jawroom.shop.Settings;

/** The key to words, signs and colours, above the matrix: two rows. */
public final class MatrixKey {

  /** Its number of columns after the first. */
  public static final int COLUMNS = 6;

  private static final int POINTS = 8;

  private record Entry(String words, CellStyle style) {}

  private MatrixKey() {}

  /** Writes the key of a matrix without close margins, from row {@code first} on. */
  public static void write(Sheet sheet, int first, Styles styles, int width) {
    write(sheet, first, styles, width, List.of());
  }

  /**
   * Writes the key of a matrix that shows which margins are close.
   *
   * @param width of a column, in characters
   */
  public static void write(Sheet sheet, int first, Styles styles, int width, Settings settings) {
    String close =
        ExtraClearance.CLOSE_SIGN
            + " close: "
            + ExtraClearance.closeRange(styles.unit(), settings.comfort());
    write(
        sheet,
        first,
        styles,
        width,
        List.of(
            new Entry(close, styles.key(Palette.CLOSE)),
            new Entry("! what to mind about a pairing", styles.key(Palette.SHORT))));
  }

  private static void write(Sheet sheet, int first, Styles styles, int width, List<Entry> further) {
    List<Entry> entries = new ArrayList<>();
    for (Finding finding : Finding.values()) {
      String margins = finding == Finding.UNKNOWN ? "; margins at worst and at best" : "";
      entries.add(new Entry(Words.explained(finding) + margins, styles.key(finding)));
    }
    entries.addAll(further);
    entries.add(
        new Entry(
            ExtraClearance.SHORT_SIGN + " less than the extra clearance wanted",
            styles.key(Palette.SHORT)));
    entries.add(new Entry("► and a heavy frame: the best vise of this machine", styles.keyBest()));
    row(sheet.createRow(first), entries.subList(0, COLUMNS), width);
    row(sheet.createRow(first + 1), entries.subList(COLUMNS, entries.size()), width);
    Cells.text(sheet.getRow(first), 0, "Words and signs", styles.label());
  }

  private static void row(Row row, List<Entry> entries, int width) {
    int lines = 1;
    for (int i = 0; i < entries.size(); i++) {
      String words = entries.get(i).words();
      Cells.text(row, 1 + i, words, entries.get(i).style());
      lines = Math.max(lines, TextLines.count(words, TextLines.perLine(width - 1, POINTS)));
    }
    row.setHeightInPoints(Styles.height(lines, POINTS));
  }
}
