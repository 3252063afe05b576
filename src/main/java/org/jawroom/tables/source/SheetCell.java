package org.jawroom.tables.source;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.regex.Pattern;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.DateUtil;
import org.apache.poi.ss.usermodel.FormulaError;
import org.jawroom.tables.cell.DateText;

/** One cell of a sheet. */
final class SheetCell {
  private SheetCell() {}

  /** A number format that adds a unit to the number shown, in quotes or escaped. */
  private static final Pattern UNIT_SHOWN =
      Pattern.compile(
          ".*(?:\"[^\"]*\\b(?:mm|cm|m|in|inch|inches|kg|lb|lbs)\\b[^\"]*\"|\\\\\"|\u2033|\\\\m|\\\\i).*",
          Pattern.CASE_INSENSITIVE);

  /** The first day number that no date goes with. */
  private static final double YEAR_10000 = 2_958_466;

  static Cell read(org.apache.poi.ss.usermodel.Cell cell) {
    CellType type = cell.getCellType();
    if (type == CellType.FORMULA) {
      type = cell.getCachedFormulaResultType();
    }
    return switch (type) {
      case STRING -> Cell.text(cell.getStringCellValue());
      case NUMERIC -> number(cell);
      case BOOLEAN ->
          new Cell(
              cell.getBooleanCellValue() ? "TRUE" : "FALSE", Cell.Kind.TRUTH, "");
      case ERROR ->
          Cell.bad(
              FormulaError.forInt(cell.getErrorCellValue()).getString(),
              "is an error of the spreadsheet; mend the formula or type the value");
      default -> Cell.text("");
    };
  }

  private static Cell number(org.apache.poi.ss.usermodel.Cell cell) {
    double value = cell.getNumericCellValue();
    if (DateUtil.isCellDateFormatted(cell)) {
      String date =
          value < YEAR_10000
              ? cell.getLocalDateTimeCellValue().toString().replace("T00:00", "")
              : plain(value);
      return new Cell(date, Cell.Kind.DATE, DateText.MESSAGE);
    }
    String text = plain(value);
    if (UNIT_SHOWN.matcher(cell.getCellStyle().getDataFormatString()).matches()) {
      return Cell.bad(
          text, "has its unit from the cell's number format alone; type the unit into the cell");
    }
    return new Cell(text, Cell.Kind.NUMBER, "");
  }

  /**
   * The decimals that were typed, without exponent: the fewest, from the 15 digits that spreadsheets
   * keep upward, that give this very number.
   */
  private static String plain(double value) {
    BigDecimal exact = new BigDecimal(value);
    BigDecimal typed = exact;
    for (int digits = 17; digits >= 15; digits--) {
      BigDecimal shorter = exact.round(new MathContext(digits));
      typed = shorter.doubleValue() == value ? shorter : typed;
    }
    return typed.signum() == 0 ? "0" : typed.stripTrailingZeros().toPlainString();
  }
}
