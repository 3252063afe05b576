package org.jawroom.report.matrix;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.streaming.SXSSFSheet;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.report.csv.PairingsCsv;
import org.jawroom.report.format.Rounding;
import org.jawroom.report.format.TextLines;
import org.jawroom.report.tally.Tally;
import org.jawroom.report.tally.Totals;
import org.jawroom.report.wording.CaveatWords;
import org.jawroom.report.wording.Finding;
import org.jawroom.report.wording.OpenWords;
import org.jawroom.report.wording.Words;
import org.jawroom.report.xlsx.Cells;
import org.jawroom.report.xlsx.PageBreaks;
import org.jawroom.report.xlsx.Paper;
import org.jawroom.report.xlsx.Remark;
import org.jawroom.report.xlsx.SheetColumns;
import org.jawroom.report.xlsx.SheetLimits;
import org.jawroom.report.xlsx.Styles;
import org.jawroom.shop.Shop;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.vise.Vise;

/**
 * The sheet <i>Matrix</i>: machines down, vises across. Each machine has two rows: its name and the
 * margins as numbers, and below, in small type, its facts and what limits each pairing.
 */
public final class MatrixSheet {
  public static final String NAME = "Matrix";

  /** The row of the input cell for the extra clearance, counted from 0. */
  public static final int EXTRA_ROW = 1;

  public static final int EXTRA_COLUMN = 1;

  /** The row of the first machine's margins. */
  public static final int FIRST_MARGIN = 7;

  /** How the reason of a {@code fits} with a caveat begins. */
  static final String BUT = "but ";

  private static final int KEY = 3;
  private static final int NAMES = 5;
  private static final int FACTS = 6;
  private static final int ROWS_EACH = 2;
  private static final int HEAD_WIDTH = 34;
  private static final int VISE_WIDTH = 18;
  private static final int SMALL = 8;

  private final SXSSFSheet sheet;
  private final Styles styles;
  private final Words words;
  private final Shop shop;
  private final List<Outcome> outcomes;
  private final Totals totals;
  private final DrawnPairings drawn;
  private final String remark;
  private final PairingLinks links;
  private final int machines;
  private final int vises;
  private PageBreaks pages;

  private MatrixSheet(
      SXSSFWorkbook book,
      Styles styles,
      Shop shop,
      List<Outcome> outcomes,
      Totals totals,
      DrawnPairings drawn,
      String remark,
      SheetLimits limits) {
    this.sheet = book.createSheet(NAME);
    this.styles = styles;
    this.words = new Words(styles.unit());
    this.shop = shop;
    this.outcomes = outcomes;
    this.totals = totals;
    this.links = new PairingLinks(book, limits, drawn);
    this.drawn = drawn;
    this.remark = remark;
    this.machines = Math.min(shop.machines().size(), (limits.rows() - FIRST_MARGIN) / ROWS_EACH);
    this.vises = Math.min(shop.vises().size(), limits.columns() - 1);
  }

  /**
   * @param remark an addition to the title; may be empty
   */
  static void add(
      SXSSFWorkbook book,
      Styles styles,
      Shop shop,
      List<Outcome> outcomes,
      Totals totals,
      DrawnPairings drawn,
      String remark,
      SheetLimits limits) {
    MatrixSheet matrix =
        new MatrixSheet(book, styles, shop, outcomes, totals, drawn, remark, limits);
    matrix.setUp();
    matrix.title();
    matrix.extraClearance();
    MatrixKey.write(matrix.sheet, KEY, styles, VISE_WIDTH, shop.settings());
    matrix.headings();
    matrix.startPages();
    for (int machine = 0; machine < matrix.machines; machine++) {
      matrix.machine(machine);
    }
    matrix.pages.finish();
    if (matrix.machines > 0 && matrix.vises > 0) {
      ExtraClearance.watch(
          matrix.sheet, styles, shop.settings().comfort(), matrix.lastRow(), matrix.vises);
    }
  }

  private int lastRow() {
    return FIRST_MARGIN + machines * ROWS_EACH - 1;
  }

  private void setUp() {
    sheet.createFreezePane(1, FIRST_MARGIN);
    SheetColumns.widths(sheet, HEAD_WIDTH, VISE_WIDTH, Math.max(vises, MatrixKey.COLUMNS));
    Paper.set(sheet, styles.unit(), NAMES, FACTS, 1, width());
  }

  private int width() {
    return HEAD_WIDTH + Math.max(vises, MatrixKey.COLUMNS) * VISE_WIDTH;
  }

  private void startPages() {
    int across = Paper.across(width());
    int visesOnPage = (Math.max(vises, MatrixKey.COLUMNS) + across - 1) / across;
    double head = 0;
    for (int row = 0; row < FIRST_MARGIN; row++) {
      head += sheet.getRow(row).getHeightInPoints();
    }
    double repeated =
        sheet.getRow(NAMES).getHeightInPoints() + sheet.getRow(FACTS).getHeightInPoints();
    double room = Paper.down(styles.unit(), HEAD_WIDTH + visesOnPage * VISE_WIDTH);
    pages = new PageBreaks(sheet, room, head, repeated);
  }

  private void title() {
    Row row = sheet.createRow(0);
    row.setHeightInPoints(26);
    String title =
        "Which vise goes on which machine"
            + remark
            + cut(machines, shop.machines().size(), "MACHINES")
            + cut(vises, shop.vises().size(), "VISES");
    Cells.text(row, 0, title, styles.title());
  }

  private static String cut(int shown, int all, String what) {
    return shown == all
        ? ""
        : "; ONLY THE FIRST "
            + shown
            + " OF "
            + all
            + " "
            + what
            + " FIT HERE, "
            + PairingsCsv.FILE
            + " HAS ALL";
  }

  private void extraClearance() {
    String unit = styles.unit().word();
    Row row = sheet.createRow(EXTRA_ROW);
    row.setHeightInPoints(20);
    Cells.text(row, 0, "Extra clearance wanted (" + unit + ")", styles.label());
    Cells.number(row, EXTRA_COLUMN, 0, styles.input());
    Cells.text(
        row,
        EXTRA_COLUMN + 1,
        "  ◄ raise it: pairings with less margin turn grey, with the sign "
            + ExtraClearance.SHORT_SIGN,
        styles.note());
    Row counted = sheet.createRow(EXTRA_ROW + 1);
    Cells.text(counted, 0, "Pairings with at least that margin", styles.label());
    Cell count = counted.createCell(EXTRA_COLUMN);
    count.setCellStyle(styles.count());
    if (machines > 0 && vises > 0) {
      count.setCellFormula(ExtraClearance.countFormula(lastRow(), vises));
      count.setCellValue((double) staying());
    }
    Remark.write(
        counted,
        EXTRA_COLUMN + 1,
        Remark.widths(HEAD_WIDTH, VISE_WIDTH, Math.max(vises, MatrixKey.COLUMNS)),
        "Margins in "
            + styles.unit().plural()
            + ", rounded toward less, at the recommended place: what is left after the required"
            + " clearance and the tolerances. Click for its "
            + (drawn.order().isEmpty()
                ? "row in Pairings."
                : "drawing, or else its row in Pairings."),
        styles,
        18);
  }

  private long staying() {
    long staying = 0;
    for (int machine = 0; machine < machines; machine++) {
      for (Outcome outcome : row(machine)) {
        OptionalLong margin = outcome.margin();
        staying += margin.isPresent() && margin.getAsLong() >= 0 ? 1 : 0;
      }
    }
    return staying;
  }

  private List<Outcome> row(int machine) {
    int first = machine * shop.vises().size();
    return outcomes.subList(first, first + vises);
  }

  private void headings() {
    Row names = sheet.createRow(NAMES);
    Row facts = sheet.createRow(FACTS);
    Cells.text(names, 0, "Machine ▼   Vise ►", styles.matrixHeading(false, false));
    Cells.text(
        facts, 0, "table and travel, what was not looked for", styles.matrixHeading(true, false));
    int nameLines = 1;
    int factLines = 1;
    for (int column = 1; column <= vises; column++) {
      Vise vise = shop.vises().get(column - 1);
      Cells.text(names, column, vise.name(), styles.matrixHeading(false, true));
      Cells.text(facts, column, words.heading(vise), styles.matrixHeading(true, true));
      // Bold capitals are wider than digits.
      nameLines = Math.max(nameLines, TextLines.count(vise.name(), VISE_WIDTH - 2));
      factLines = Math.max(factLines, smallLines(words.heading(vise), VISE_WIDTH));
    }
    names.setHeightInPoints(Styles.height(Math.min(nameLines, 6), 10));
    facts.setHeightInPoints(Styles.height(factLines, SMALL));
  }

  private void machine(int index) {
    Machine machine = shop.machines().get(index);
    List<Outcome> pairings = row(index);
    Tally tally = totals.machine(index);
    Row margins = sheet.createRow(FIRST_MARGIN + index * ROWS_EACH);
    Row reasons = sheet.createRow(FIRST_MARGIN + index * ROWS_EACH + 1);
    String facts = words.table(machine) + "\n" + Words.caution(machine);
    String name = machine.name() + (machine.candidate() ? " (candidate)" : "");
    Cells.text(margins, 0, name, styles.matrixHeading(false, false));
    Cells.text(reasons, 0, facts, styles.matrixHeading(true, false));
    int lines = smallLines(facts, HEAD_WIDTH);
    for (int vise = 0; vise < vises; vise++) {
      Outcome outcome = pairings.get(vise);
      boolean isBest =
          tally.best().isPresent()
              && tally.bestIndex() == (long) index * shop.vises().size() + vise;
      links.add(margin(margins, vise + 1, outcome, isBest), index * shop.vises().size() + vise);
      String reason = reason(outcome, isBest);
      Cells.text(reasons, vise + 1, reason, styles.reason(Finding.of(outcome), isBest));
      lines = Math.max(lines, smallLines(reason, VISE_WIDTH));
    }
    int nameLines = TextLines.count(name, HEAD_WIDTH - 4);
    margins.setHeightInPoints(Math.max(20, Styles.height(nameLines, 10)));
    reasons.setHeightInPoints(Styles.height(lines, SMALL));
    pages.add(margins.getRowNum(), margins.getHeightInPoints() + reasons.getHeightInPoints());
  }

  private Cell margin(Row row, int column, Outcome outcome, boolean best) {
    Finding finding = Finding.of(outcome);
    OptionalLong margin = outcome.margin();
    if (margin.isPresent()) {
      double number = styles.unit().number(margin.getAsLong(), Rounding.DOWN);
      return Cells.number(row, column, number, styles.margin(finding, best));
    }
    String word =
        new OpenWords(styles.unit())
            .cell(outcome.bounds())
            .filter(margins -> finding == Finding.UNKNOWN)
            .orElse(finding.word());
    return Cells.text(row, column, finding.sign() + " " + word, styles.margin(finding, best));
  }

  private String reason(Outcome outcome, boolean best) {
    List<String> lines = new ArrayList<>();
    boolean isFit = outcome.verdict() == Verdict.FITS;
    if (isFit) {
      new CaveatWords(styles.unit()).of(outcome).forEach(caveat -> lines.add(BUT + caveat));
    }
    String reason = words.reason(outcome);
    if (!reason.isEmpty()) {
      lines.add(reason);
    }
    (isFit ? words.otherMarks(outcome) : words.marks(outcome))
        .forEach(mark -> lines.add("! " + mark));
    CaveatWords.checked(outcome).ifPresent(lines::add);
    if (best) {
      lines.add("► best for this machine");
    }
    return String.join("\n", lines);
  }

  private static int smallLines(String text, int width) {
    return TextLines.count(text, TextLines.perLine(width - 1, SMALL));
  }

  /** The address of a pairing's margin in a matrix of {@code vises} columns. */
  static String address(int pairing, int vises) {
    return CellReference.convertNumToColString(1 + pairing % vises)
        + (FIRST_MARGIN + pairing / vises * ROWS_EACH + 1);
  }

  /** The address of the extra clearance, {@code $B$2}. */
  public static String extraAddress() {
    return "$" + CellReference.convertNumToColString(EXTRA_COLUMN) + "$" + (EXTRA_ROW + 1);
  }
}
