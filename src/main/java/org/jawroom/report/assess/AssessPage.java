package org.jawroom.report.assess;

import java.awt.Color;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.jawroom.advice.assess.Assessed;
import org.jawroom.advice.assess.Assessment;
import org.jawroom.drawing.file.PdfFaces;
import org.jawroom.drawing.file.PdfOutlines;
import org.jawroom.drawing.text.TextRun;
import org.jawroom.drawing.text.Typeface;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.xlsx.RunFacts;

/**
 * One page of an assessment, laid out from the top: which is the better buy, facts down and
 * candidates across, what to ask the sellers, cautions. What does not fit even at the smallest type
 * size is cut at the page's end, and a last line says so.
 */
final class AssessPage {
  private static final double MARGIN = 36;
  private static final double GUTTER = 8;
  private static final double LABELS = 0.26;
  private static final double LEADING = 1.2;
  private static final int NAMED = 8;
  private static final Color INK = new Color(0x1A1A1A);
  private static final Color FAINT = new Color(0x666666);
  private static final Color RULE = new Color(0xD0D0D0);
  private static final Color GROUND = new Color(0xE6E6E6);
  private static final Color BEST = new Color(0xCFE6F7);

  private static final List<String> CAUTIONS =
      List.of(
          "Room is that of a solid block over everything the vise sweeps, its own tolerance not taken off. Only"
              + " what is listed can be hit; blanks are unknown, never zero.",
          "A nut's base is not judged: try one. How hard a vise holds, and what slots and table bear, is yours to"
              + " judge.",
          "This does not replace the check on the machine. Lock out before reaching in. Local codes and the"
              + " machine maker's instructions come first.");

  /** Cells side by side, each wrapped, on one background; an empty row is a small gap. */
  private record Row(List<Cell> cells, Color ground, boolean ruled) {
    int lines() {
      return cells.stream().mapToInt(cell -> cell.lines().size()).max().orElse(0);
    }
  }

  private record Cell(double left, Typeface face, Color ink, double size, List<String> lines) {}

  private final Assessment assessment;
  private final RunFacts facts;
  private final List<Assessed> candidates;
  private final double size;
  private final PDRectangle paper;
  private final List<Row> rows = new ArrayList<>();

  AssessPage(Assessment assessment, RunFacts facts, List<Assessed> candidates, double size) {
    this.assessment = assessment;
    this.facts = facts;
    this.candidates = candidates;
    this.size = size;
    this.paper = facts.unit() == PeopleUnit.INCH ? PDRectangle.LETTER : PDRectangle.A4;
    lay();
  }

  /** Whether all rows fit on the page. */
  boolean fits() {
    return rows.stream().mapToDouble(this::height).sum() <= room();
  }

  private double room() {
    return paper.getHeight() - 2 * MARGIN - footer();
  }

  private double footer() {
    return 7 * LEADING * 2;
  }

  private void lay() {
    prose("Candidates beside what the shop owns", Typeface.BOLD, INK, 15);
    AssessWords words = new AssessWords(facts.unit(), assessment, NAMED);
    List<String> better = BetterBuyWords.lines(words);
    prose(better.get(0), Typeface.BOLD, INK, size + 0.5);
    better.stream().skip(1).forEach(line -> prose(line, Typeface.PLAIN, FAINT, size));
    gap();
    names();
    for (AssessFacts.Section section : AssessFacts.of(assessment, candidates, words)) {
      prose(section.title(), Typeface.BOLD, INK, size + 0.5);
      section.facts().forEach(this::fact);
    }
    gap();
    owned();
    SellerWords seller = new SellerWords(facts.unit());
    for (Assessed one : candidates) {
      List<String> lines = seller.lines(one);
      if (!lines.isEmpty()) {
        prose("Ask the seller of " + one.machine().name(), Typeface.BOLD, INK, size + 0.5);
        lines.forEach(line -> prose(line, Typeface.PLAIN, INK, size));
      }
    }
    gap();
    CAUTIONS.forEach(line -> prose(line, Typeface.PLAIN, FAINT, size));
  }

  private void names() {
    List<Cell> cells = new ArrayList<>();
    for (int i = 0; i < candidates.size(); i++) {
      Assessed one = candidates.get(i);
      boolean best =
          assessment.candidates().size() > 1
              && assessment.better().decidedBy().isPresent()
              && assessment.better().best().contains(one);
      String name = one.machine().name() + (best ? " – the better buy" : "");
      cells.add(cell(name, left(i), across(), Typeface.BOLD, INK, size + 1));
    }
    rows.add(new Row(cells, GROUND, false));
  }

  private void fact(AssessFacts.Fact fact) {
    List<Cell> cells = new ArrayList<>();
    cells.add(cell(fact.label(), MARGIN, labels() - GUTTER, Typeface.PLAIN, FAINT, size));
    for (int i = 0; i < candidates.size(); i++) {
      cells.add(
          cell(fact.text().apply(candidates.get(i)), left(i), across(), Typeface.PLAIN, INK, size));
    }
    rows.add(new Row(cells, null, true));
  }

  /** The owned machines with their number of fitting kinds of vise. */
  private void owned() {
    if (!assessment.owned().isEmpty()) {
      prose(
          "Kinds of vise that fit on what you own: "
              + assessment.owned().stream()
                  .map(one -> one.machine().name() + " " + one.vises(Verdict.FITS).size())
                  .collect(Collectors.joining(", "))
              + ".",
          Typeface.PLAIN,
          INK,
          size);
    }
  }

  private double labels() {
    return (paper.getWidth() - 2 * MARGIN) * LABELS;
  }

  private double column() {
    return (paper.getWidth() - 2 * MARGIN - labels()) / candidates.size();
  }

  private double left(int candidate) {
    return MARGIN + labels() + candidate * column();
  }

  private double across() {
    return column() - GUTTER;
  }

  private void prose(String text, Typeface face, Color ink, double points) {
    Cell cell = cell(text, MARGIN, paper.getWidth() - 2 * MARGIN, face, ink, points);
    rows.add(new Row(List.of(cell), null, false));
  }

  private void gap() {
    rows.add(new Row(List.of(), null, false));
  }

  private static Cell cell(
      String text, double left, double width, Typeface face, Color ink, double points) {
    return new Cell(
        left, face, ink, points, FittedLines.of(Typeface.shown(text), face, points, width));
  }

  private double height(Row row) {
    double tallest = row.cells().stream().mapToDouble(Cell::size).max().orElse(size / 2);
    double extra = row.ruled() ? 1.5 : row.ground() != null ? 4 : 0.5;
    return Math.max(1, row.lines()) * tallest * LEADING + extra;
  }

  void draw(PDDocument document, PdfFaces faces) throws IOException {
    PDPage page = new PDPage(paper);
    document.addPage(page);
    try (PDPageContentStream pen = new PDPageContentStream(document, page)) {
      double top = paper.getHeight() - MARGIN;
      double end = MARGIN + footer();
      for (Row row : rows) {
        if (top - height(row) < end) {
          String more = "There is more: see " + AssessWorkbook.FILE;
          write(pen, faces, cell(more, MARGIN, paper.getWidth(), Typeface.BOLD, INK, 7), end);
          break;
        }
        draw(pen, faces, row, top);
        top -= height(row);
      }
      String made =
          "jawroom"
              + (facts.toolVersion().isEmpty() ? "" : " " + facts.toolVersion())
              + " · "
              + facts.files().stream()
                  .map(RunFacts.FileRead::name)
                  .collect(Collectors.joining(", "));
      write(
          pen,
          faces,
          cell(made, MARGIN, paper.getWidth() * 2, Typeface.PLAIN, FAINT, 7),
          MARGIN + 7);
    }
  }

  private void draw(PDPageContentStream pen, PdfFaces faces, Row row, double top)
      throws IOException {
    double height = height(row);
    double wide = paper.getWidth() - 2 * MARGIN;
    if (row.ground() != null) {
      pen.setNonStrokingColor(row.ground());
      pen.addRect((float) MARGIN, (float) (top - height), (float) wide, (float) height);
      pen.fill();
      for (int i = 0; i < row.cells().size(); i++) {
        Cell cell = row.cells().get(i);
        if (assessment.candidates().size() > 1
            && assessment.better().decidedBy().isPresent()
            && assessment.better().best().contains(candidates.get(i))) {
          pen.setNonStrokingColor(BEST);
          pen.addRect(
              (float) (cell.left() - GUTTER / 2), (float) (top - height),
              (float) (column() - (i == candidates.size() - 1 ? -GUTTER / 2 : 0)), (float) height);
          pen.fill();
        }
      }
    }
    for (Cell cell : row.cells()) {
      write(pen, faces, cell, top - (row.ground() != null ? 1.5 : 0));
    }
    if (row.ruled()) {
      pen.setStrokingColor(RULE);
      pen.setLineWidth(0.4f);
      pen.moveTo((float) MARGIN, (float) (top - height + 0.5));
      pen.lineTo((float) (MARGIN + wide), (float) (top - height + 0.5));
      pen.stroke();
    }
  }

  private static void write(PDPageContentStream pen, PdfFaces faces, Cell cell, double top)
      throws IOException {
    double baseline = top - cell.size();
    for (String line : cell.lines()) {
      double at = cell.left();
      for (TextRun run : TextRun.of(line)) {
        if (run.outlined()) {
          pen.setNonStrokingColor(cell.ink());
          PdfOutlines.write(pen, run, cell.face(), cell.size(), at, baseline);
        } else {
          pen.beginText();
          pen.setFont(faces.get(cell.face()), (float) cell.size());
          pen.setNonStrokingColor(cell.ink());
          pen.newLineAtOffset((float) at, (float) baseline);
          pen.showText(run.text());
          pen.endText();
        }
        at += run.width(cell.face(), cell.size());
      }
      baseline -= cell.size() * LEADING;
    }
  }
}
