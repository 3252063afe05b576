package org.jawroom.report.matrix;

import org.apache.poi.ss.usermodel.DataValidation;
import org.apache.poi.ss.usermodel.DataValidationConstraint.OperatorType;
import org.apache.poi.ss.usermodel.DataValidationHelper;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellRangeAddressList;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.model.StylesTable;
import org.apache.poi.xssf.streaming.SXSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFConditionalFormattingRule;
import org.apache.poi.xssf.usermodel.XSSFFontFormatting;
import org.apache.poi.xssf.usermodel.XSSFPatternFormatting;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFSheetConditionalFormatting;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.format.Rounding;
import org.jawroom.report.wording.CaveatWords;
import org.jawroom.report.wording.Finding;
import org.jawroom.report.wording.Words;
import org.jawroom.report.xlsx.Palette;
import org.jawroom.report.xlsx.Styles;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTDxf;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTNumFmt;

/**
 * The conditional formats that compare every margin of the matrix with the extra clearance wanted:
 * a smaller margin is short, one that exceeds it by less than the setting {@code comfort} is close.
 * Only margins of 0 or more are compared; other cells keep the format of their verdict. A close
 * margin keeps the sign of a verdict that is no plain {@code fits}, recognised by how the reason in
 * the cell below begins.
 */
public final class ExtraClearance {
  public static final String SHORT_SIGN = "▼";
  static final String CLOSE_SIGN = "▲";

  private static final String CLOSE_WORD = "close";

  /** Beyond every number format of a cell. */
  private static final int FIRST_FORMAT = 400;

  private final StylesTable table;
  private final XSSFSheet sheet;
  private final Styles styles;
  private final long comfort;

  private ExtraClearance(SXSSFSheet streamed, Styles styles, long comfort) {
    this.comfort = comfort;
    this.sheet = streamed.getWorkbook().getXSSFWorkbook().getSheet(streamed.getSheetName());
    this.table = sheet.getWorkbook().getStylesSource();
    this.styles = styles;
  }

  /** The range that counts as close, for the key. */
  static String closeRange(PeopleUnit unit, long comfort) {
    return "less than " + unit.fine(comfort, Rounding.UP) + " " + unit.word() + " to spare";
  }

  /** The formula that counts the margins not below the extra clearance. */
  static String countFormula(int lastRow, int columns) {
    return "COUNTIF("
        + cells(lastRow, columns).formatAsString()
        + ",\">=\"&"
        + MatrixSheet.extraAddress()
        + ")";
  }

  /**
   * Sets the formats on the rows from the first margin to {@code lastRow}, and data validation on
   * the input cell.
   */
  static void watch(SXSSFSheet streamed, Styles styles, long comfort, int lastRow, int columns) {
    ExtraClearance extra = new ExtraClearance(streamed, styles, comfort);
    extra.validate(streamed);
    CellRangeAddress[] cells = {cells(lastRow, columns)};
    XSSFSheetConditionalFormatting formats = extra.sheet.getSheetConditionalFormatting();
    XSSFConditionalFormattingRule[] rules = {
      extra.rule(formats, extra.isShort(), Palette.SHORT, Palette.SHORT_INK),
      extra.rule(formats, extra.isCloseAnd(Words.KEEP_OPEN), Palette.CLOSE, Styles.INK),
      extra.rule(formats, extra.isCloseAnd(MatrixSheet.BUT), Palette.CLOSE, Styles.INK),
      extra.rule(formats, extra.isCloseAnd(CaveatWords.HANDLE_HAS), Palette.CLOSE, Styles.INK),
      extra.rule(formats, extra.isClose(), Palette.CLOSE, Styles.INK)
    };
    formats.addConditionalFormatting(cells, rules);
    extra.numberFormat(0, styles.signedFormat(SHORT_SIGN, ""));
    extra.numberFormat(1, styles.signedFormat(Finding.LIMITED.sign(), CLOSE_WORD));
    extra.numberFormat(2, styles.signedFormat(Finding.FITS_BUT.sign(), CLOSE_WORD));
    extra.numberFormat(3, styles.signedFormat(Finding.AWKWARD.sign(), CLOSE_WORD));
    extra.numberFormat(4, styles.signedFormat(CLOSE_SIGN, CLOSE_WORD));
  }

  /** As {@link #watch}, for one row per machine without reasons below; marks only short margins. */
  public static void watchRows(SXSSFSheet streamed, Styles styles, int lastRow, int columns) {
    ExtraClearance extra = new ExtraClearance(streamed, styles, 0);
    extra.validate(streamed);
    XSSFSheetConditionalFormatting formats = extra.sheet.getSheetConditionalFormatting();
    String margin = address(0);
    String isShort =
        "IF(ISNUMBER(#),AND(#>=0,#<".replace("#", margin) + MatrixSheet.extraAddress() + "),FALSE)";
    XSSFConditionalFormattingRule[] rules = {
      extra.rule(formats, isShort, Palette.SHORT, Palette.SHORT_INK)
    };
    formats.addConditionalFormatting(new CellRangeAddress[] {cells(lastRow, columns)}, rules);
    extra.numberFormat(0, styles.signedFormat(SHORT_SIGN, ""));
  }

  private static CellRangeAddress cells(int lastRow, int columns) {
    return new CellRangeAddress(MatrixSheet.FIRST_MARGIN, lastRow, 1, columns);
  }

  private XSSFConditionalFormattingRule rule(
      XSSFSheetConditionalFormatting formats, String condition, String fill, String ink) {
    XSSFConditionalFormattingRule rule = formats.createConditionalFormattingRule(condition);
    XSSFPatternFormatting pattern = rule.createPatternFormatting();
    pattern.setFillBackgroundColor(Palette.colour(fill));
    XSSFFontFormatting font = rule.createFontFormatting();
    font.setFontColor(Palette.colour(ink));
    return rule;
  }

  /**
   * Applies the condition to the cell's own number (a margin) or to the cell above (a reason under
   * its margin). Text cells are excluded: comparing them would propagate an error through OR.
   */
  private String either(String condition) {
    String ofNumber = "IF(ISNUMBER(#),AND(#>=0," + condition + "),FALSE)";
    return "OR("
        + ofNumber.replace("#", address(0))
        + ","
        + ofNumber.replace("#", address(-1))
        + ")";
  }

  private String isShort() {
    return either("#<" + MatrixSheet.extraAddress());
  }

  private String isClose() {
    return either("ROUND(#-" + MatrixSheet.extraAddress() + ",4)<" + close());
  }

  /** Applies where the cell below begins with {@code reason}. */
  private String isCloseAnd(String reason) {
    String begins = "LEFT(" + address(1) + "," + reason.length() + ")=\"" + reason + "\"";
    return "AND(" + begins + "," + isClose() + ")";
  }

  /** The comfortable margin as a number of the formula, in the unit of the cells. */
  private String close() {
    String millimetres = PeopleUnit.MM.fine(comfort, Rounding.UP);
    return styles.unit() == PeopleUnit.MM ? millimetres : millimetres + "/25.4";
  }

  private static String address(int rowsBelow) {
    return CellReference.convertNumToColString(1) + (MatrixSheet.FIRST_MARGIN + rowsBelow + 1);
  }

  /**
   * Spreadsheets let a conditional format change the number format; the library's own API does not.
   */
  private void numberFormat(int rule, String format) {
    long style =
        sheet.getCTWorksheet().getConditionalFormattingArray(0).getCfRuleArray(rule).getDxfId();
    CTDxf dxf = table.getDxfAt((int) style);
    CTNumFmt number = dxf.addNewNumFmt();
    number.setNumFmtId(FIRST_FORMAT + rule);
    number.setFormatCode(format);
  }

  private void validate(SXSSFSheet streamed) {
    DataValidationHelper helper = streamed.getDataValidationHelper();
    DataValidation validation =
        helper.createValidation(
            helper.createDecimalConstraint(OperatorType.GREATER_OR_EQUAL, "0", null),
            new CellRangeAddressList(
                MatrixSheet.EXTRA_ROW,
                MatrixSheet.EXTRA_ROW,
                MatrixSheet.EXTRA_COLUMN,
                MatrixSheet.EXTRA_COLUMN));
    validation.setShowErrorBox(true);
    validation.createErrorBox("Extra clearance", "A number, 0 or more.");
    streamed.addValidationData(validation);
  }
}
