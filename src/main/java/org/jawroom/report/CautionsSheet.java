package org.jawroom.report;

import java.util.List;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.streaming.SXSSFSheet;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;

/** The sheet <i>Cautions</i>: what the figures do not say. */
final class CautionsSheet {
  static final String NAME = "Cautions";

  private static final int WIDTH = 120;
  private static final int POINTS = 10;

  private static final List<String> CAUTIONS = List.of(
      "This does not replace the check on the machine. Before the first cut, and after any change, move"
          + " every axis slowly through its whole travel with the vise bolted down, and look.",
      "Lock the machine out before you reach in to measure, to bolt a vise down or to look: switched off,"
          + " locked, and tried.",
      "Local codes and the instructions of the machine's maker come first. So does what the vise's maker"
          + " says of bolts, torque and lifting.",
      "Clear means the bare vise: no tool, no part, no stops, no hoses and no chips. Tools and parts need a"
          + " check of their own.",
      "Only what is listed can be hit. A machine's row says what nobody looked for; it may be there all the"
          + " same. \"Nothing listed to hit\" is no promise of room.",
      "A blank is not zero: what was not measured is unknown, and so is every pairing that hangs on it.",
      "A tolerance taken as 0 means that the row told neither a tolerance nor what was measured with. Such a"
          + " margin may be less than it looks.",
      "Too close: measure means that it is clear only if every measurement is exact. Measure again before"
          + " you decide.",
      "A limited opening holds only while the jaws stay within it, cutting and loading alike.",
      "Where the handle must be off, the margin holds while cutting only with the handle taken off.",
      "Margins hold for the place, the turn and the slots told in Pairings. Bolted elsewhere, the vise may"
          + " hit something. The best margin may be at another place than the one recommended.",
      "Gaps are as they were measured. Covers, doors and lines that have since been moved, bent or replaced"
          + " must be measured again.",
      "Too heavy counts the vise alone: the part and what holds it come on top. Lift with two, or with a"
          + " hoist.",
      "Figures are rounded toward less clearance. They are no better than the measurements behind them.");

  private CautionsSheet() {}

  static void add(SXSSFWorkbook book, Styles styles) {
    add(book, styles, List.of());
  }

  /** {@code more}: what else there is to mind in this workbook. */
  static void add(SXSSFWorkbook book, Styles styles, List<String> more) {
    SXSSFSheet sheet = book.createSheet(NAME);
    sheet.setColumnWidth(0, 5 * 256);
    sheet.setColumnWidth(1, WIDTH * 256);
    Paper.set(sheet, styles.unit(), -1, -1, 0, WIDTH + 5);
    int next = 0;
    Row top = sheet.createRow(next++);
    top.setHeightInPoints(28);
    Cells.text(top, 0, "Cautions", styles.title());
    int number = 1;
    for (String caution : Stream.concat(CAUTIONS.stream(), more.stream()).toList()) {
      Row row = sheet.createRow(next++);
      int lines = TextLines.count(caution, TextLines.perLine(WIDTH, POINTS));
      row.setHeightInPoints(Styles.height(lines, POINTS) + 6);
      Cells.text(row, 0, number++ + ".", styles.prose());
      Cells.text(row, 1, caution, styles.prose());
    }
  }
}
