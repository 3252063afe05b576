package org.jawroom.tables.cell;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Decimal numbers without unit: one sign separates decimals, nothing separates thousands. */
public final class Numerals {
  private Numerals() {}

  private static final int LONGEST_BARE = 20;

  private static final Pattern DECIMAL = Pattern.compile("[+-]?(\\d+\\.?\\d*|\\.\\d+)");
  private static final Pattern EXPONENT = Pattern.compile("[+-]?[\\d.,]+[eE][+-]?\\d+");
  private static final Pattern THOUSANDS =
      Pattern.compile("[+]?([1-9]\\d{0,2}\\.\\d{3})(?: ?(\\p{L}+\\.?))?");
  private static final Pattern SPACED = Pattern.compile("[+-]?\\d{1,3}( \\d{3})+([.,]\\d+)?");

  /**
   * Whether a text is a number as most cells hold it: ASCII digits, at most a point between two of
   * them, at most a minus before them. Such a text is no range, no fraction and no date, whatever
   * else is asked of it.
   */
  public static boolean isBare(String text) {
    int first = text.startsWith("-") ? 1 : 0;
    int point = -1;
    for (int i = first; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == '.' && point < 0 && i > first) {
        point = i;
      } else if (c < '0' || c > '9') {
        return false;
      }
    }
    return text.length() > first && text.length() <= LONGEST_BARE && point < text.length() - 1;
  }

  /**
   * Parses a number, 0 or more.
   *
   * @param comma whether the decimal sign is a comma rather than a point
   */
  public static BigDecimal number(String text, boolean comma) throws BadCell {
    String plain = CellText.plain(text);
    CellText.refuseHopeless(plain);
    BigDecimal number =
        decimal(plain, "", comma)
            .orElseThrow(() -> new BadCell("is not a number; write digits alone, as 25 or 12.5"));
    if (number.signum() < 0) {
      throw new BadCell("is below 0");
    }
    return number;
  }

  /** Parses a whole number, 0 or more. */
  public static int count(String text, boolean comma) throws BadCell {
    String plain = CellText.plain(text);
    CellText.refuseHopeless(plain);
    BigDecimal number =
        decimal(plain, "", comma)
            .orElseThrow(() -> new BadCell("is not a whole number; write digits alone, as 3"));
    if (number.signum() < 0) {
      throw new BadCell("is below 0");
    }
    if (number.stripTrailingZeros().scale() > 0) {
      throw new BadCell("is not a whole number");
    }
    if (number.compareTo(BigDecimal.valueOf(Integer.MAX_VALUE)) > 0) {
      throw new BadCell("is too large");
    }
    return number.intValueExact();
  }

  /**
   * The decimal that {@code plain} is; empty if it has not the look of one at all.
   *
   * @param unit what stands behind the number, empty if nothing does: the number that a message
   *     says to write has it too, since without it the same number may mean another amount
   */
  static Optional<BigDecimal> decimal(String plain, String unit, boolean comma) throws BadCell {
    if (EXPONENT.matcher(plain).matches()) {
      throw new BadCell("has an exponent; write it out");
    }
    if (SPACED.matcher(plain).matches()) {
      throw new BadCell(
          "has spaces between its digits; if it is one number, write "
              + plain.replace(" ", "")
              + behind(unit)
              + "; of two readings, the one that leaves less room");
    }
    refuseWrongSeparator(plain, behind(unit), comma ? ',' : '.', comma ? '.' : ',');
    String point = comma ? plain.replace(',', '.') : plain;
    return DECIMAL.matcher(point).matches() ? Optional.of(new BigDecimal(point)) : Optional.empty();
  }

  /**
   * Refuses a number such as {@code 1.250}, with or without a unit, as {@code 1,250} is refused:
   * the point may be a thousands separator. Not applied to lengths, since inches are written to
   * three decimals.
   *
   * @param price whether the advice must have at most two decimals
   */
  public static void refuseThousands(String text, boolean price) throws BadCell {
    Matcher parts = THOUSANDS.matcher(CellText.plain(text));
    if (parts.matches()) {
      String point = parts.group(1);
      String bare = point.replace(".", "");
      BigDecimal small = new BigDecimal(point).stripTrailingZeros();
      String clear = plain(price ? small.setScale(2, RoundingMode.CEILING) : small, false);
      if (clear.equals(point)) {
        // With a fourth decimal it can only be a decimal number.
        clear += "0";
      }
      throw new BadCell(
          couldBe(
              plain(small, false),
              bare,
              clear,
              behind(parts.group(2) == null ? "" : parts.group(2))));
    }
  }

  private static String couldBe(String small, String bare, String clear, String unit) {
    return "could be " + small + " or " + bare + "; write " + bare + unit + " or " + clear + unit;
  }

  private static String behind(String unit) {
    return unit.isEmpty() ? "" : " " + unit;
  }

  /** Without exponent and idle zeros. */
  static String plain(BigDecimal number, boolean comma) {
    String point = number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString();
    return comma ? point.replace('.', ',') : point;
  }

  private static void refuseWrongSeparator(String plain, String unit, char right, char wrong)
      throws BadCell {
    if (plain.indexOf(wrong) < 0 || !plain.matches("[+-]?[\\d.,]*\\d[\\d.,]*")) {
      return;
    }
    String w = Pattern.quote(String.valueOf(wrong));
    String r = Pattern.quote(String.valueOf(right));
    String bare = plain.replace(String.valueOf(wrong), "");
    String swapped = plain.replace(wrong, right);
    if (plain.matches("[+-]?[1-9]\\d{0,2}" + w + "\\d{3}")) {
      String small = swapped.replaceAll("0+$", "").replaceAll(r + "$", "");
      throw new BadCell(couldBe(small, bare, small, unit));
    }
    if (plain.matches("[+-]?\\d{1,3}(" + w + "\\d{3})+(" + r + "\\d*)?")
        && !plain.matches("[+-]?0.*")) {
      throw new BadCell("has thousands separators; write " + bare + unit);
    }
    if (plain.matches("[+-]?\\d*" + w + "\\d*")) {
      throw new BadCell(
          wrong == ','
              ? "has a decimal comma; write "
                  + swapped
                  + unit
                  + ", or set the setting decimal to comma"
              : "has a decimal point, but the setting decimal says comma; write " + swapped + unit);
    }
    throw new BadCell("has points and commas mixed; write digits and at most one " + right);
  }
}
