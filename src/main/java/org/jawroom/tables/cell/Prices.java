package org.jawroom.tables.cell;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Prices: a number without currency, above 0, in whole hundredths. */
public final class Prices {
  private static final BigDecimal HIGHEST = new BigDecimal("10000000000");

  private Prices() {}

  /**
   * Parses a price; the result has two decimals however many were written.
   *
   * @param comma whether the decimal sign is a comma rather than a point
   */
  public static BigDecimal parse(String text, boolean comma) throws BadCell {
    BigDecimal price = Numerals.number(text, comma);
    if (price.signum() == 0) {
      throw new BadCell("is no price; leave the cell blank where nothing is for sale");
    }
    if (price.stripTrailingZeros().scale() > 2) {
      // Rounded up: too low a price would let a plan promise more than the money buys.
      String up = price.setScale(2, RoundingMode.CEILING).toPlainString();
      throw new BadCell("has more than two decimals; write " + (comma ? up.replace('.', ',') : up));
    }
    if (price.compareTo(HIGHEST) > 0) {
      throw new BadCell("is too large; the highest price is " + HIGHEST.toPlainString());
    }
    return price.setScale(2);
  }
}
