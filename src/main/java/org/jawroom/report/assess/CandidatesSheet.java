package org.jawroom.report.assess;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.Function;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.streaming.SXSSFSheet;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;
import org.jawroom.advice.assess.Assessed;
import org.jawroom.advice.assess.Assessment;
import org.jawroom.report.format.TextLines;
import org.jawroom.report.xlsx.Cells;
import org.jawroom.report.xlsx.Paper;
import org.jawroom.report.xlsx.Remark;
import org.jawroom.report.xlsx.SheetLimits;
import org.jawroom.report.xlsx.Styles;

/**
 * The sheet <i>Candidates</i>: facts down, machines across, candidates first, then owned machines.
 */
final class CandidatesSheet {
  static final String NAME = "Candidates";

  private static final int LABEL_WIDTH = 36;
  private static final int CANDIDATE_WIDTH = 38;
  private static final int OWNED_WIDTH = 15;
  private static final int POINTS = 9;

  private final SXSSFSheet sheet;
  private final Styles styles;
  private final Assessment assessment;
  private final List<Assessed> owned;
  private int nextRow;

  private CandidatesSheet(
      SXSSFWorkbook book, Styles styles, Assessment assessment, SheetLimits limits) {
    this.sheet = book.createSheet(NAME);
    this.styles = styles;
    this.assessment = assessment;
    int room = Math.max(0, limits.columns() - 1 - assessment.candidates().size());
    this.owned = assessment.owned().subList(0, Math.min(assessment.owned().size(), room));
  }

  static void add(SXSSFWorkbook book, Styles styles, Assessment assessment, SheetLimits limits) {
    CandidatesSheet sheet = new CandidatesSheet(book, styles, assessment, limits);
    AssessWords words = new AssessWords(styles.unit(), assessment, Integer.MAX_VALUE);
    sheet.head(words);
    List<Assessed> shown = new ArrayList<>(assessment.candidates());
    shown.addAll(sheet.owned);
    AssessFacts.of(assessment, shown, words).forEach(sheet::section);
  }

  private void head(AssessWords words) {
    Row title = sheet.createRow(nextRow++);
    title.setHeightInPoints(26);
    Cells.text(title, 0, "Candidates beside what the shop owns" + cut(), styles.title());
    for (String line : BetterBuyWords.lines(words)) {
      Row row = sheet.createRow(nextRow++);
      if (nextRow == 2) {
        row.setHeightInPoints(15);
        Cells.text(row, 0, line, styles.label());
      } else {
        Remark.write(row, 0, widths(), line, styles, 15);
      }
    }
    nextRow++;
    Row names = sheet.createRow(nextRow++);
    Cells.text(names, 0, "Fact ▼   Machine ►", styles.matrixHeading(false, false));
    int column = 1;
    int lines = 1;
    for (Assessed one : assessment.candidates()) {
      boolean best =
          assessment.candidates().size() > 1
              && assessment.better().decidedBy().isPresent()
              && assessment.better().best().contains(one);
      String name = one.machine().name() + (best ? " – the better buy" : "");
      lines = Math.max(lines, TextLines.count(name, CANDIDATE_WIDTH - 2));
      Cells.text(names, column++, name, styles.matrixHeading(false, true));
    }
    for (Assessed one : owned) {
      lines = Math.max(lines, TextLines.count(one.machine().name(), OWNED_WIDTH - 2));
      Cells.text(names, column++, one.machine().name(), styles.matrixHeading(false, true));
    }
    names.setHeightInPoints(Styles.height(Math.min(lines, 6), 10));
    setUp(names.getRowNum());
  }

  private String cut() {
    return owned.size() == assessment.owned().size()
        ? ""
        : "; ONLY THE FIRST "
            + owned.size()
            + " OF "
            + assessment.owned().size()
            + " OWNED FIT HERE";
  }

  private void setUp(int names) {
    sheet.createFreezePane(1, names + 1);
    List<Integer> widths = widths();
    for (int column = 0; column < widths.size(); column++) {
      sheet.setColumnWidth(column, widths.get(column) * 256);
    }
    int width = widths.stream().mapToInt(Integer::intValue).sum();
    Paper.set(sheet, styles.unit(), names, names, 1, width);
  }

  private List<Integer> widths() {
    List<Integer> widths = new ArrayList<>();
    widths.add(LABEL_WIDTH);
    widths.addAll(Collections.nCopies(assessment.candidates().size(), CANDIDATE_WIDTH));
    widths.addAll(Collections.nCopies(owned.size(), OWNED_WIDTH));
    return widths;
  }

  private void section(AssessFacts.Section section) {
    Row heading = sheet.createRow(nextRow++);
    heading.setHeightInPoints(22);
    Cells.text(heading, 0, section.title(), styles.section());
    section.facts().forEach(this::fact);
  }

  private void fact(AssessFacts.Fact fact) {
    Row row = sheet.createRow(nextRow++);
    int lines = fill(row, 0, fact.label(), LABEL_WIDTH, styles.entry());
    int column = 1;
    for (Assessed one : assessment.candidates()) {
      lines = Math.max(lines, fill(row, column++, one, fact.text(), CANDIDATE_WIDTH));
    }
    for (Assessed one : owned) {
      lines = Math.max(lines, fill(row, column++, one, fact.brief(), OWNED_WIDTH));
    }
    row.setHeightInPoints(Styles.height(lines, POINTS));
  }

  private int fill(Row row, int column, Assessed one, Function<Assessed, String> text, int width) {
    return fill(row, column, text.apply(one), width, styles.entry());
  }

  private static int fill(Row row, int column, String text, int width, CellStyle style) {
    Cells.text(row, column, text, style);
    return TextLines.count(text, TextLines.perLine(width - 2, POINTS));
  }
}
