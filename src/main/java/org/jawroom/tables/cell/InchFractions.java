package org.jawroom.tables.cell;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Fractions of an inch: {@code 1/4}, {@code 6 1/2}, {@code 6-1/2}. Any other text with a slash,
 * such as two readings or a fraction of millimetres, is refused with the right spelling.
 */
final class InchFractions {
  private InchFractions() {}

  private static final Pattern FRACTION = Pattern.compile("(?:(\\d+)[ -])?(\\d+) ?/ ?(\\d+)");
  private static final Pattern READINGS = Pattern.compile("[\\d.,]+( ?/ ?[\\d.,]+)+");

  /** The divisions of inch rules (common practice, no source). */
  private static final Set<BigInteger> DIVISIONS =
      Set.of(
          BigInteger.valueOf(2),
          BigInteger.valueOf(4),
          BigInteger.valueOf(8),
          BigInteger.valueOf(16),
          BigInteger.valueOf(32),
          BigInteger.valueOf(64));

  private static final String TWO_READINGS =
      "has a slash: two readings? write one, the one that leaves less room";

  static boolean isFraction(String number) {
    return FRACTION.matcher(number).matches();
  }

  /** Refuses several readings separated by a slash. */
  static void refuseReadings(String number) throws BadCell {
    if (READINGS.matcher(number).matches()) {
      throw new BadCell(TWO_READINGS);
    }
  }

  /**
   * The exact value of a {@link #isFraction fraction}.
   *
   * @param sign of the whole, for the advice only
   * @param comma whether the decimal sign is a comma, for the advice only
   */
  static BigDecimal parse(String sign, String number, Unit unit, boolean comma) throws BadCell {
    Matcher parts = FRACTION.matcher(number);
    if (!parts.matches()) {
      throw new IllegalArgumentException("not a fraction: " + number);
    }
    boolean mixed = parts.group(1) != null;
    BigInteger whole = mixed ? new BigInteger(parts.group(1)) : BigInteger.ZERO;
    BigInteger over = new BigInteger(parts.group(2));
    BigInteger under = new BigInteger(parts.group(3));
    if (under.signum() == 0) {
      throw new BadCell("divides by 0");
    }
    if (!DIVISIONS.contains(under)) {
      throw new BadCell(
          (mixed ? "has " + under + " below its slash; write a decimal number" : TWO_READINGS)
              + ". A fraction of an inch has 2, 4, 8, 16, 32 or 64 there");
    }
    String minus = sign.equals("-") ? "-" : "";
    if (over.compareTo(under) >= 0) {
      String written = minus + written(whole.multiply(under).add(over), under) + " in";
      throw new BadCell(
          mixed
              ? "has a fraction of 1 or more behind its whole number; write " + written
              : "is 1 or more; write "
                  + written
                  + ", or of two readings the one that leaves less room");
    }
    BigDecimal value =
        new BigDecimal(whole).add(new BigDecimal(over).divide(new BigDecimal(under)));
    if (unit != Unit.IN) {
      if (!mixed && !over.gcd(under).equals(BigInteger.ONE)) {
        throw new BadCell(TWO_READINGS + ". A fraction of an inch has an inch mark here");
      }
      String decimal = minus + Numerals.plain(value, comma) + " " + unit.sign();
      throw new BadCell(
          "is a fraction, which only inches have; write " + minus + number + " in, or " + decimal);
    }
    return value;
  }

  /** As whole inches and a fraction in lowest terms. */
  private static String written(BigInteger over, BigInteger under) {
    BigInteger[] parts = over.divideAndRemainder(under);
    BigInteger common = parts[1].gcd(under);
    String fraction = parts[1].divide(common) + "/" + under.divide(common);
    return parts[1].signum() == 0 ? parts[0].toString() : parts[0] + " " + fraction;
  }
}
