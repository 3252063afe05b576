package org.jawroom.report.overview;

import java.util.EnumMap;
import java.util.Map;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.streaming.SXSSFSheet;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;
import org.jawroom.report.csv.PairingsCsv;
import org.jawroom.report.format.Rounding;
import org.jawroom.report.format.TextLines;
import org.jawroom.report.matrix.ExtraClearance;
import org.jawroom.report.matrix.MatrixKey;
import org.jawroom.report.matrix.MatrixSheet;
import org.jawroom.report.tally.Tally;
import org.jawroom.report.tally.Totals;
import org.jawroom.report.wording.Finding;
import org.jawroom.report.wording.Shown;
import org.jawroom.report.xlsx.Cells;
import org.jawroom.report.xlsx.Paper;
import org.jawroom.report.xlsx.Remark;
import org.jawroom.report.xlsx.SheetColumns;
import org.jawroom.report.xlsx.SheetLimits;
import org.jawroom.report.xlsx.Styles;
import org.jawroom.shop.Shop;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.vise.Vise;

/**
 * The sheet <i>Matrix</i> of a shop too large to list each pairing in full: machines down, vises
 * across, one row per machine, in each cell the margin or the sign of the finding. Filled pairing
 * by pairing.
 */
final class OverviewMatrix {

  private static final int KEY = 3;
  private static final int NAMES = 5;
  private static final int FIRST = MatrixSheet.FIRST_MARGIN;
  private static final int HEAD_WIDTH = 34;
  private static final int VISE_WIDTH = 14;

  private final SXSSFSheet sheet;
  private final Styles styles;
  private final Shop shop;
  private final int machines;
  private final int vises;
  private final Map<Finding, CellStyle> plain = new EnumMap<>(Finding.class);
  private final Map<Finding, CellStyle> framed = new EnumMap<>(Finding.class);
  private long next;
  private Row row;
  private long clear;

  OverviewMatrix(SXSSFWorkbook book, Styles styles, Shop shop, SheetLimits limits) {
    this.sheet = book.createSheet(MatrixSheet.NAME);
    this.styles = styles;
    this.shop = shop;
    this.vises = Math.min(shop.vises().size(), limits.columns() - 1);
    this.machines =
        Math.min(shop.machines().size(), Math.min(limits.rows() - FIRST, limits.cells() / vises));
    for (Finding finding : Finding.values()) {
      plain.put(finding, styles.margin(finding, false));
      framed.put(finding, styles.margin(finding, true));
    }
    head();
    ExtraClearance.watchRows(sheet, styles, FIRST + machines - 1, vises);
  }

  private void head() {
    sheet.createFreezePane(1, FIRST);
    SheetColumns.widths(sheet, HEAD_WIDTH, VISE_WIDTH, Math.max(vises, MatrixKey.COLUMNS));
    int width = HEAD_WIDTH + Math.max(vises, MatrixKey.COLUMNS) * VISE_WIDTH;
    Paper.set(sheet, styles.unit(), NAMES, NAMES, 1, width);
    Row title = sheet.createRow(0);
    title.setHeightInPoints(26);
    Cells.text(title, 0, "Which vise goes on which machine" + cut(), styles.title());
    Row extra = sheet.createRow(MatrixSheet.EXTRA_ROW);
    extra.setHeightInPoints(20);
    Cells.text(extra, 0, "Extra clearance wanted (" + styles.unit().word() + ")", styles.label());
    Cells.number(extra, MatrixSheet.EXTRA_COLUMN, 0, styles.input());
    Cells.text(
        extra,
        MatrixSheet.EXTRA_COLUMN + 1,
        "  ◄ raise it: pairings with less margin turn grey, with the sign "
            + ExtraClearance.SHORT_SIGN,
        styles.note());
    Row note = sheet.createRow(MatrixSheet.EXTRA_ROW + 1);
    Remark.write(
        note,
        0,
        Remark.widths(HEAD_WIDTH, VISE_WIDTH, Math.max(vises, MatrixKey.COLUMNS)),
        "Margins in "
            + styles.unit().plural()
            + ", rounded toward less: what is left after the required clearance and the tolerances."
            + " What limits each, and every caveat: "
            + PairingsCsv.FILE
            + ", or jawroom explain.",
        styles,
        15);
    MatrixKey.write(sheet, KEY, styles, VISE_WIDTH);
    Row names = sheet.createRow(NAMES);
    Cells.text(names, 0, "Machine ▼   Vise ►", styles.matrixHeading(false, false));
    int lines = 1;
    for (int column = 1; column <= vises; column++) {
      Vise vise = shop.vises().get(column - 1);
      Cells.text(names, column, vise.name(), styles.matrixHeading(false, true));
      lines = Math.max(lines, TextLines.count(vise.name(), VISE_WIDTH - 2));
    }
    names.setHeightInPoints(Styles.height(Math.min(lines, 6), 10));
    // An empty row in place of the facts in a smaller shop's matrix.
    sheet.createRow(NAMES + 1).setHeightInPoints(3);
  }

  /** Which rows or columns are cut off; empty if none is. */
  String cut() {
    return cut(machines, shop.machines().size(), "MACHINES")
        + cut(vises, shop.vises().size(), "VISES");
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
            + ", "
            + PairingsCsv.FILE
            + " HAS ALL";
  }

  /**
   * Adds the next pairing: machines, then vises.
   *
   * @param totals over at least the pairings so far, this one included
   */
  void add(Shown shown, Totals totals) {
    int machine = (int) (next / shop.vises().size());
    int vise = (int) (next % shop.vises().size());
    next++;
    if (machine >= machines) {
      return;
    }
    if (vise == 0) {
      begin(shop.machines().get(machine), machine);
    }
    if (vise < vises) {
      cell(shown, vise + 1);
    }
    if (vise == shop.vises().size() - 1) {
      mark(totals.machine(machine));
    }
  }

  private void begin(Machine machine, int index) {
    row = sheet.createRow(FIRST + index);
    String name = machine.name() + (machine.candidate() ? " (candidate)" : "");
    Cells.text(row, 0, name, styles.matrixHeading(false, false));
  }

  private void cell(Shown shown, int column) {
    Cell cell = row.createCell(column);
    cell.setCellStyle(plain.get(shown.finding()));
    if (shown.margin().isPresent()) {
      long margin = shown.margin().getAsLong();
      cell.setCellValue(styles.unit().number(margin, Rounding.DOWN));
      clear += margin >= 0 ? 1 : 0;
    } else {
      cell.setCellValue(shown.finding().sign());
    }
  }

  /** Frames the best vise of the machine, unless its column is cut off. */
  private void mark(Tally ofMachine) {
    int vise = (int) (ofMachine.bestIndex() % shop.vises().size());
    ofMachine
        .best()
        .filter(best -> vise < vises)
        .ifPresent(
            best -> row.getCell(vise + 1).setCellStyle(framed.get(Finding.of(best.outcome()))));
  }

  /**
   * The formula, for another sheet, that counts the displayed pairings with at least the extra
   * clearance.
   */
  String countFormula() {
    return "COUNTIF("
        + MatrixSheet.NAME
        + "!"
        + new CellRangeAddress(FIRST, FIRST + machines - 1, 1, vises).formatAsString()
        + ",\">=\"&"
        + MatrixSheet.NAME
        + "!"
        + MatrixSheet.extraAddress()
        + ")";
  }

  /** The initial result of that formula, without extra clearance. */
  long clear() {
    return clear;
  }
}
