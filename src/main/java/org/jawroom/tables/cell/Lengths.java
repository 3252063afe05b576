package org.jawroom.tables.cell;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jawroom.geometry.Length;

/**
 * Lengths as people write them: {@code 165}, {@code 165 mm}, {@code 16.5cm}, {@code 6.5in}, {@code
 * 6 1/2"}, {@code 6-1/2 in}, {@code 1/4}.
 */
public final class Lengths {
  private Lengths() {}

  /**
   * A length read.
   *
   * @param value half-nanometres: the exact number rounded to a whole nanometre, halves toward
   *     +infinity
   * @param bare whether no unit was written behind it
   * @param number as written, with its sign and without its unit
   * @param unit the one written, else that of a bare number
   */
  public record Read(long value, boolean bare, String number, Unit unit) {}

  private static final Pattern PARTS =
      Pattern.compile("([+-]?) ?([\\d.,](?:[\\d.,/ -]*[\\d.,])?)(?: ?([^\\d.,/ -][^\\d]*))?");
  private static final Pattern FRACTION = Pattern.compile("(?:(\\d+)[ -])?(\\d+) ?/ ?(\\d+)");

  private static final String NOT_A_LENGTH =
      "is not a length; write a number, with a unit if you like, as 165, 165 mm, 6.5in or 6 1/2\"";

  private static final BigInteger LARGEST = BigInteger.valueOf(Length.LARGEST / Length.NANOMETRE);

  /** A fraction in lowest or any other terms; {@code under} is above 0. */
  private record Ratio(BigInteger over, BigInteger under) {}

  /**
   * The length written in {@code text}.
   *
   * @param unit of a bare number
   * @param comma whether decimals stand behind a comma rather than a point
   */
  public static Read parse(String text, Unit unit, boolean comma) throws BadCell {
    String plain = CellText.plain(text);
    CellText.refuseHopeless(plain);
    Matcher parts = PARTS.matcher(plain);
    if (!parts.matches()) {
      Numerals.decimal(plain, comma);
      throw new BadCell(NOT_A_LENGTH);
    }
    if (parts.group(3) != null && parts.group(3).matches("[eE][+-]?")) {
      throw new BadCell("has an exponent; write it out");
    }
    Ratio ratio = ratio(parts.group(1), parts.group(2), comma);
    Unit written = unit;
    if (parts.group(3) != null) {
      written =
          Unit.named(parts.group(3))
              .orElseThrow(
                  () -> new BadCell("has a unit that is not known; write mm, cm, m or in"));
    }
    BigInteger over = ratio.over().multiply(BigInteger.valueOf(written.nanometres()));
    if (parts.group(1).equals("-")) {
      over = over.negate();
    }
    if (over.abs().compareTo(LARGEST.multiply(ratio.under())) > 0) {
      throw new BadCell("is more than 100 m");
    }
    long nanometres = roundHalvesUp(over, ratio.under()).longValueExact();
    return new Read(
        nanometres * Length.NANOMETRE,
        parts.group(3) == null,
        parts.group(1) + parts.group(2),
        written);
  }

  /** Millimetres in plain decimals, exactly: {@code 6.35 mm}. */
  public static String inMillimetres(long halfNanometres) {
    BigDecimal mm = BigDecimal.valueOf(halfNanometres).divide(BigDecimal.valueOf(Length.MM));
    return (mm.signum() == 0 ? "0" : mm.stripTrailingZeros().toPlainString()) + " mm";
  }

  /** The size of the number, its sign left off. */
  private static Ratio ratio(String sign, String number, boolean comma) throws BadCell {
    Matcher fraction = FRACTION.matcher(number);
    if (!fraction.matches()) {
      Optional<BigDecimal> decimal = Numerals.decimal(sign + number, comma);
      BigDecimal exact = decimal.orElseThrow(() -> new BadCell(NOT_A_LENGTH)).abs();
      BigInteger under = BigInteger.TEN.pow(Math.max(0, exact.scale()));
      return new Ratio(exact.multiply(new BigDecimal(under)).toBigIntegerExact(), under);
    }
    BigInteger over = new BigInteger(fraction.group(2));
    BigInteger under = new BigInteger(fraction.group(3));
    if (under.signum() == 0) {
      throw new BadCell("divides by 0");
    }
    if (fraction.group(1) == null) {
      return new Ratio(over, under);
    }
    if (over.compareTo(under) >= 0) {
      throw new BadCell(
          "has a fraction of 1 or more behind its whole number; write one of the two");
    }
    return new Ratio(new BigInteger(fraction.group(1)).multiply(under).add(over), under);
  }

  /** floor(over/under + 1/2). */
  private static BigInteger roundHalvesUp(BigInteger over, BigInteger under) {
    BigInteger two = BigInteger.TWO;
    BigInteger[] parts = over.multiply(two).add(under).divideAndRemainder(under.multiply(two));
    return parts[1].signum() < 0 ? parts[0].subtract(BigInteger.ONE) : parts[0];
  }
}
