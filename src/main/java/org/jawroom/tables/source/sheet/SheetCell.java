package org.jawroom.tables.source.sheet;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.poi.ss.usermodel.DateUtil;
import org.jawroom.tables.cell.DateText;
import org.jawroom.tables.source.grid.Cell;

/**
 * One cell of a sheet as the file has it; see ECMA-376 part 1, 18.3.1.4.
 *
 * @param type its {@code t}; empty for a number
 * @param format of its style
 * @param formula whether it is a formula, so that {@code value} is its cached result
 * @param valued whether the file has an element for the value, even an empty one
 * @param value its {@code v}, or its inline text; empty for none
 */
record SheetCell(
    String type, SheetStyles.Format format, boolean formula, boolean valued, String value) {

  /** The first day number beyond the range of dates. */
  private static final double YEAR_10000 = 2_958_466;

  private static final int LONGEST_NUMBER = 400;

  private static final String AGAIN = "; type it again";

  /**
   * @param texts the shared strings
   * @param from1904 whether the workbook counts days from 1904
   */
  Cell read(SharedTexts texts, boolean from1904) {
    // A formula may yield an empty text, but not an empty number.
    if (formula && value.isEmpty() && !(type.equals("str") && valued)) {
      // Never 0: programs that write formulas often leave the computation to the spreadsheet.
      return Cell.bad(
          "",
          "is a formula whose value was never computed; open the workbook and save it, or type the value");
    }
    if (value.isEmpty()) {
      return Cell.text("");
    }
    return switch (type) {
      case "s" -> sharedText(texts);
      case "str", "inlineStr" -> text(value);
      case "b" -> truth();
      case "e" ->
          Cell.bad(value, "is an error of the spreadsheet; mend the formula or type the value");
      case "d" -> new Cell(value, Cell.Kind.DATE, DateText.MESSAGE);
      case "", "n" -> number(from1904);
      default -> Cell.bad(value, "is of a type that no workbook has" + AGAIN);
    };
  }

  private Cell sharedText(SharedTexts texts) {
    Optional<String> text = Optional.empty();
    try {
      text = texts.get(Integer.parseInt(value.strip()));
    } catch (NumberFormatException e) {
      // An index that is not a number refers to no text either.
    }
    return text.map(this::text)
        .orElseGet(() -> Cell.bad("", "points to a text that the workbook does not hold" + AGAIN));
  }

  private Cell text(String text) {
    return new Cell(text, Cell.Kind.TEXT, "", format.code().ofText());
  }

  private Cell truth() {
    return switch (value.strip()) {
      case "0", "false" -> new Cell("FALSE", Cell.Kind.TRUTH, "");
      case "1", "true" -> new Cell("TRUE", Cell.Kind.TRUTH, "");
      default -> Cell.bad(value, "is neither true nor false, as its type says" + AGAIN);
    };
  }

  private Cell number(boolean from1904) {
    OptionalDouble parsed = parsed();
    if (parsed.isEmpty()) {
      return Cell.bad(value, "is no number, as its type says" + AGAIN);
    }
    double number = parsed.getAsDouble();
    if (format.date() && DateUtil.isValidExcelDate(number)) {
      String date =
          number < YEAR_10000
              ? DateUtil.getLocalDateTime(number, from1904).toString().replace("T00:00", "")
              : plain(number);
      return new Cell(date, Cell.Kind.DATE, DateText.MESSAGE);
    }
    return new Cell(plain(number), Cell.Kind.NUMBER, "", format.code().of(number));
  }

  /** Parses the lexical form of a double in XML Schema; empty if it is not finite. */
  private OptionalDouble parsed() {
    String written = value.strip();
    boolean possible =
        written.length() <= LONGEST_NUMBER
            && written.chars().allMatch(letter -> "0123456789+-.eE".indexOf(letter) >= 0);
    try {
      double number = possible ? Double.parseDouble(written) : Double.NaN;
      return Double.isFinite(number) ? OptionalDouble.of(number) : OptionalDouble.empty();
    } catch (NumberFormatException e) {
      return OptionalDouble.empty();
    }
  }

  /**
   * The decimals as typed, without exponent: the shortest representation, of the 15 digits that
   * spreadsheets keep or more, that parses to this very number.
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
