package org.jawroom.tables.source;

import java.math.BigDecimal;
import java.math.MathContext;
import org.apache.poi.ss.usermodel.DateUtil;
import org.jawroom.tables.cell.DateText;

/**
 * One cell of a sheet as the file holds it; see ECMA-376 part 1, 18.3.1.4.
 *
 * @param type its {@code t}; empty for a number
 * @param format of its style
 * @param formula whether it is computed, so that {@code value} is what the spreadsheet kept of that
 * @param value its {@code v}, or its inline text; empty for none
 */
record SheetCell(String type, SheetStyles.Format format, boolean formula, String value) {

  /** The first day number that no date goes with. */
  private static final double YEAR_10000 = 2_958_466;

  /**
   * @param texts those shared, {@code from1904} how the workbook counts days
   */
  Cell read(SharedTexts texts, boolean from1904) {
    if (value.isEmpty() && formula && !type.equals("str")) {
      // Never 0: programs that write formulas often leave it to the spreadsheet to compute them.
      return Cell.bad(
          "",
          "is a formula whose value was never computed; open the workbook and save it, or type the value");
    }
    return switch (type) {
      case "s" -> text(value.isEmpty() ? "" : texts.get(Integer.parseInt(value.trim())));
      case "str", "inlineStr" -> text(value);
      case "b" ->
          value.isEmpty()
              ? Cell.text("")
              : new Cell(value.trim().equals("0") ? "FALSE" : "TRUE", Cell.Kind.TRUTH, "");
      case "e" ->
          Cell.bad(value, "is an error of the spreadsheet; mend the formula or type the value");
      case "d" ->
          value.isEmpty() ? Cell.text("") : new Cell(value, Cell.Kind.DATE, DateText.MESSAGE);
      case "", "n" -> value.isEmpty() ? Cell.text("") : number(Double.parseDouble(value), from1904);
      default -> throw new IllegalArgumentException("cell of type " + type);
    };
  }

  private Cell text(String text) {
    return new Cell(text, Cell.Kind.TEXT, "", format.code().ofText());
  }

  private Cell number(double value, boolean from1904) {
    if (format.date() && DateUtil.isValidExcelDate(value)) {
      String date =
          value < YEAR_10000
              ? DateUtil.getLocalDateTime(value, from1904).toString().replace("T00:00", "")
              : plain(value);
      return new Cell(date, Cell.Kind.DATE, DateText.MESSAGE);
    }
    return new Cell(plain(value), Cell.Kind.NUMBER, "", format.code().of(value));
  }

  /**
   * The decimals that were typed, without exponent: the fewest, from the 15 digits that
   * spreadsheets keep upward, that give this very number.
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
