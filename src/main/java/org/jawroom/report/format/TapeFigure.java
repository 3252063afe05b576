package org.jawroom.report.format;

import org.jawroom.geometry.Length;

/**
 * How a length that is taped or read off a rule is written: to 0.1 mm, or to the 1/32 in of a tape.
 */
public record TapeFigure(PeopleUnit unit) {

  /** The step of an inch tape, half-nanometres. */
  public static final long INCH_STEP = Length.INCH / 32;

  /** The nearest figure on the tape in that direction, half-nanometres. */
  public long rounded(long length, Rounding rounding) {
    return unit == PeopleUnit.INCH
        ? rounding.count(length, INCH_STEP) * INCH_STEP
        : unit.rounded(length, rounding);
  }

  /** {@code 9 5/16} or {@code 236.5}, without trailing zeros; the length is not negative. */
  public String text(long length, Rounding rounding) {
    return unit == PeopleUnit.INCH
        ? fraction(rounding.count(length, INCH_STEP))
        : unit.brief(length, rounding);
  }

  private static String fraction(long steps) {
    long whole = steps / 32;
    long parts = steps % 32;
    if (parts == 0) {
      return Long.toString(whole);
    }
    long divisor = Long.lowestOneBit(parts);
    String fraction = parts / divisor + "/" + 32 / divisor;
    return whole == 0 ? fraction : whole + " " + fraction;
  }
}
