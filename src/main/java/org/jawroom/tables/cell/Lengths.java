package org.jawroom.tables.cell;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jawroom.geometry.Length;

/**
 * Parses lengths: {@code 165}, {@code 165 mm}, {@code 16.5cm}, {@code 6.5in}, {@code 6 1/2"},
 * {@code 6-1/2 in}, {@code 1/4}.
 */
public final class Lengths {
  private Lengths() {}

  /**
   * A parsed length.
   *
   * @param value half-nanometres: the exact number rounded to a whole nanometre, halves toward
   *     +infinity
   * @param bare whether it has no unit of its own
   * @param number as written, with its sign and without its unit
   * @param unit the one written, else that of a bare number
   */
  public record Read(long value, boolean bare, String number, Unit unit) {}

  private static final Pattern PARTS =
      Pattern.compile("([+-]?) ?([\\d.,](?:[\\d.,/ -]*[\\d.,])?)(?: ?([^\\d.,/ -][^\\d]*))?");

  private static final String NOT_A_LENGTH =
      "is not a length; write a number, with a unit if you like, as 165, 165 mm, 6.5in or 6 1/2\"";

  private static final BigDecimal LARGEST = BigDecimal.valueOf(Length.LARGEST / Length.NANOMETRE);
  private static final BigDecimal HALF = new BigDecimal("0.5");

  /**
   * Parses the length in {@code text}.
   *
   * @param unit of a bare number
   * @param comma whether the decimal sign is a comma rather than a point
   */
  public static Read parse(String text, Unit unit, boolean comma) throws BadCell {
    // Most cells hold such a number, and the patterns below take long.
    if (!comma && Numerals.isBare(text)) {
      return read(new BigDecimal(text), text, true, unit);
    }
    String plain = CellText.plain(text);
    DateText.refuseFraction(plain, comma);
    CellText.refuseHopeless(plain);
    Matcher parts = PARTS.matcher(plain);
    if (!parts.matches()) {
      Numerals.decimal(plain, "", comma);
      throw new BadCell(NOT_A_LENGTH);
    }
    if (parts.group(3) != null && parts.group(3).matches("[eE][+-]?")) {
      throw new BadCell("has an exponent; write it out");
    }
    Optional<BigDecimal> decimal =
        InchFractions.isFraction(parts.group(2))
            ? Optional.empty()
            : Optional.of(decimal(parts, comma));
    Unit written = unit;
    if (parts.group(3) != null) {
      written =
          Unit.named(parts.group(3))
              .orElseThrow(
                  () -> new BadCell("has a unit that is not known; write mm, cm, m or in"));
    }
    BigDecimal size =
        decimal.isPresent()
            ? decimal.get()
            : InchFractions.parse(parts.group(1), parts.group(2), written, comma);
    return read(
        parts.group(1).equals("-") ? size.negate() : size,
        parts.group(1) + parts.group(2),
        parts.group(3) == null,
        written);
  }

  private static Read read(BigDecimal size, String number, boolean bare, Unit unit) throws BadCell {
    BigDecimal exact = size.multiply(BigDecimal.valueOf(unit.nanometres()));
    if (exact.abs().compareTo(LARGEST) > 0) {
      throw new BadCell("is more than 100 m");
    }
    return new Read(nanometres(exact) * Length.NANOMETRE, bare, number, unit);
  }

  /** Millimetres in plain decimals, exactly: {@code 6.35 mm}. */
  public static String inMillimetres(long halfNanometres) {
    BigDecimal mm = BigDecimal.valueOf(halfNanometres).divide(BigDecimal.valueOf(Length.MM));
    return (mm.signum() == 0 ? "0" : mm.stripTrailingZeros().toPlainString()) + " mm";
  }

  /** The size of the number, its sign left off. */
  private static BigDecimal decimal(Matcher parts, boolean comma) throws BadCell {
    String unit = parts.group(3) == null ? "" : parts.group(3);
    Optional<BigDecimal> decimal = Numerals.decimal(parts.group(1) + parts.group(2), unit, comma);
    if (decimal.isEmpty()) {
      InchFractions.refuseReadings(parts.group(2));
      throw new BadCell(NOT_A_LENGTH);
    }
    return decimal.get().abs();
  }

  private static long nanometres(BigDecimal exact) {
    return exact.add(HALF).setScale(0, RoundingMode.FLOOR).longValueExact();
  }
}
