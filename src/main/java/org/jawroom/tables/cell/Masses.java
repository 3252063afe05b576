package org.jawroom.tables.cell;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Parses masses in kilograms, or in pounds of exactly 0.45359237 kg. */
public final class Masses {
  private Masses() {}

  private static final BigDecimal POUND = new BigDecimal("0.45359237");
  private static final Pattern PARTS = Pattern.compile("(.*?) ?(\\p{L}+\\.?)?");

  /** The mass in {@code text}, in kg, 0 or more; a bare number is kg. */
  public static BigDecimal parse(String text, boolean comma) throws BadCell {
    String plain = CellText.plain(text);
    CellText.refuseHopeless(plain);
    Matcher parts = PARTS.matcher(plain);
    if (!parts.matches() || parts.group(1).isEmpty()) {
      throw notAMass();
    }
    String written = parts.group(2) == null ? "" : parts.group(2);
    BigDecimal number =
        Numerals.decimal(parts.group(1), written, comma).orElseThrow(Masses::notAMass);
    if (number.signum() < 0) {
      throw new BadCell("is below 0");
    }
    return switch (written.toLowerCase(Locale.ROOT)) {
      case "", "kg", "kgs" -> number;
      case "lb", "lbs", "lb.", "lbs." -> number.multiply(POUND);
      default -> throw new BadCell("has a unit that is not known; write kg or lb");
    };
  }

  private static BadCell notAMass() {
    return new BadCell("is not a mass; write a number, with kg or lb if you like, as 32 or 75 lb");
  }
}
