package org.jawroom.report.overview;

import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.streaming.SXSSFSheet;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.search.Recommendation;
import org.jawroom.report.csv.PairingsCsv;
import org.jawroom.report.csv.RemediesCsv;
import org.jawroom.report.csv.UnknownsCsv;
import org.jawroom.report.format.Rounding;
import org.jawroom.report.format.TextLines;
import org.jawroom.report.matrix.MatrixWorkbook;
import org.jawroom.report.matrix.ReportOptions;
import org.jawroom.report.tally.Totals;
import org.jawroom.report.wording.Finding;
import org.jawroom.report.wording.Words;
import org.jawroom.report.xlsx.Cells;
import org.jawroom.report.xlsx.Paper;
import org.jawroom.report.xlsx.Styles;

/**
 * The sheet <i>Overview</i> of a large shop: counts of verdicts, the worst pairings, and in words
 * what this workbook contains and leaves out.
 */
final class OverviewSheet {
  static final String NAME = "Overview";

  private static final int LEFT = 12;
  private static final int RIGHT = 110;
  private static final int POINTS = 10;

  private final SXSSFSheet sheet;
  private final Styles styles;
  private int nextRow;

  private OverviewSheet(SXSSFWorkbook book, Styles styles) {
    this.sheet = book.createSheet(NAME);
    this.styles = styles;
    sheet.setColumnWidth(0, LEFT * 256);
    sheet.setColumnWidth(1, RIGHT * 256);
    Paper.set(sheet, styles.unit(), -1, -1, 0, LEFT + RIGHT);
  }

  static void add(
      SXSSFWorkbook book, Styles styles, Totals totals, OverviewMatrix matrix, boolean remedies) {
    OverviewSheet overview = new OverviewSheet(book, styles);
    Row top = overview.sheet.createRow(overview.nextRow++);
    top.setHeightInPoints(26);
    Cells.text(top, 0, MatrixWorkbook.TITLE, styles.title());
    overview.counts(totals, matrix);
    overview.worst(totals);
    overview.section("What this workbook has");
    overview.line(
        "Of more than "
            + ReportOptions.DETAILED
            + " pairings it does not list each in full: "
            + PairingsCsv.FILE
            + " does, a row for each.");
    overview.line(
        "Matrix: a cell for each pairing, with its margin or the sign of its verdict"
            + matrix.cut()
            + ".");
    overview.line("Pairings: in full, the best of each machine and the best of each vise.");
    overview.line("By machine, By vise: counted over all pairings.");
    overview.line(
        remedies
            ? "What would make a pairing fit is in "
                + RemediesCsv.FILE
                + ", what to measure in "
                + UnknownsCsv.FILE
                + "."
            : "Remedies, the limits of blanks and how many stand on one table were not worked out:"
                + " that takes far longer. Ask with --remedies, or jawroom explain about one pairing.");
  }

  private void counts(Totals totals, OverviewMatrix matrix) {
    section(
        totals.pairings()
            + " pairings: "
            + totals.shop().machines().size()
            + " machines × "
            + totals.shop().vises().size()
            + " vises");
    for (Finding finding : Finding.values()) {
      if (totals.all().count(finding) > 0) {
        Row row = sheet.createRow(nextRow++);
        Cells.number(row, 0, (double) totals.all().count(finding), styles.number("0"));
        Cells.text(row, 1, Words.explained(finding), styles.entry(finding));
      }
    }
    Row row = sheet.createRow(nextRow++);
    Cell count = row.createCell(0);
    count.setCellStyle(styles.number("0"));
    count.setCellFormula(matrix.countFormula());
    count.setCellValue((double) matrix.clear());
    Cells.text(row, 1, "on Matrix with at least the extra clearance wanted there", styles.prose());
  }

  private void worst(Totals totals) {
    if (totals.worst().missed() == 0) {
      return;
    }
    section("The worst of " + totals.worst().missed() + " that miss");
    for (Outcome outcome : totals.worst().kept()) {
      Row row = sheet.createRow(nextRow++);
      double margin = styles.unit().number(outcome.margin().getAsLong(), Rounding.DOWN);
      Cells.number(row, 0, margin, styles.length());
      Cells.text(
          row,
          1,
          outcome.machine().name()
              + " × "
              + outcome.vise().name()
              + ": "
              + outcome.recommended().flatMap(Recommendation::limit).map(Words::limit).orElse(""),
          styles.prose());
    }
  }

  private void section(String heading) {
    nextRow++;
    Row row = sheet.createRow(nextRow++);
    row.setHeightInPoints(20);
    Cells.text(row, 0, heading, styles.section());
  }

  private void line(String text) {
    Row row = sheet.createRow(nextRow++);
    Cells.text(row, 1, text, styles.prose());
    row.setHeightInPoints(
        Styles.height(TextLines.count(text, TextLines.perLine(RIGHT, POINTS)), POINTS));
  }
}
