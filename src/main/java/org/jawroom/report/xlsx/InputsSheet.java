package org.jawroom.report.xlsx;

import java.util.List;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.streaming.SXSSFSheet;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;
import org.jawroom.report.format.TextLines;

/** The sheet <i>Inputs</i>: the inputs of the run, so that it can be judged and repeated. */
public final class InputsSheet {
  static final String NAME = "Inputs";

  private static final int LEFT = 44;
  private static final int RIGHT = 90;
  private static final int POINTS = 10;

  private final SXSSFSheet sheet;
  private final Styles styles;
  private int nextRow;

  private InputsSheet(SXSSFWorkbook book, Styles styles) {
    this.sheet = book.createSheet(NAME);
    this.styles = styles;
    sheet.setColumnWidth(0, LEFT * 256);
    sheet.setColumnWidth(1, RIGHT * 256);
    Paper.set(sheet, styles.unit(), -1, -1, 0, LEFT + RIGHT);
    sheet.getPrintSetup().setLandscape(false);
  }

  public static void add(SXSSFWorkbook book, Styles styles, RunFacts facts, SheetLimits limits) {
    InputsSheet inputs = new InputsSheet(book, styles);
    Row top = inputs.sheet.createRow(inputs.nextRow++);
    top.setHeightInPoints(24);
    Cells.text(top, 0, "Inputs", styles.title());
    if (!facts.toolVersion().isEmpty()) {
      inputs.pair("Made by", facts.toolVersion());
    }
    inputs.section("Settings in force");
    facts.settings().forEach(setting -> inputs.pair(setting.label(), setting.value()));
    inputs.section("Files read, each with its fingerprint");
    facts.files().forEach(file -> inputs.pair(file.name(), file.fingerprint()));
    inputs.lines("Blanks: not known, and not taken as zero", facts.blanks(), limits);
    inputs.lines("Defaults taken", facts.defaults(), limits);
    inputs.lines("Warnings", facts.warnings(), limits);
  }

  private void section(String heading) {
    nextRow++;
    Row row = sheet.createRow(nextRow++);
    row.setHeightInPoints(20);
    Cells.text(row, 0, heading, styles.section());
  }

  private void pair(String label, String value) {
    Row row = sheet.createRow(nextRow++);
    Cells.text(row, 0, label, styles.prose());
    Cells.text(row, 1, value, styles.prose());
    int lines =
        Math.max(
            TextLines.count(label, TextLines.perLine(LEFT, POINTS)),
            TextLines.count(value, TextLines.perLine(RIGHT, POINTS)));
    row.setHeightInPoints(Styles.height(lines, POINTS));
  }

  /** Adds a section of lines across both columns, cut where the sheet would overflow. */
  private void lines(String heading, List<String> lines, SheetLimits limits) {
    section(heading);
    if (lines.isEmpty()) {
      line("none");
    }
    // Three sections may fill a quarter of the sheet each.
    int shown = Math.min(lines.size(), limits.rows() / 4);
    lines.subList(0, shown).forEach(this::line);
    if (shown < lines.size()) {
      line("and " + (lines.size() - shown) + " more that do not fit on this sheet");
    }
  }

  private void line(String text) {
    Row row = sheet.createRow(nextRow);
    Cells.text(row, 0, text, styles.prose());
    int lines = TextLines.count(text, TextLines.perLine(LEFT + RIGHT, POINTS));
    row.setHeightInPoints(Styles.height(lines, POINTS));
    sheet.addMergedRegionUnsafe(new CellRangeAddress(nextRow, nextRow, 0, 1));
    nextRow++;
  }
}
