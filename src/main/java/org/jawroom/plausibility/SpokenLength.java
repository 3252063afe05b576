package org.jawroom.plausibility;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.jawroom.geometry.Length;

/** A length in both units, so that a mix-up of the two shows. */
final class SpokenLength {
  private SpokenLength() {}

  /** To the nearest 0.001 of either unit: {@code 15.875 mm (0.625 in)}. */
  static String of(long length) {
    return in(length, Length.MM) + " mm (" + in(length, Length.INCH) + " in)";
  }

  /** In millimetres alone, to the nearest 0.001: {@code 14 mm}. */
  static String mm(long length) {
    return in(length, Length.MM) + " mm";
  }

  private static String in(long length, long unit) {
    BigDecimal quotient =
        BigDecimal.valueOf(length).divide(BigDecimal.valueOf(unit), 3, RoundingMode.HALF_UP);
    return quotient.signum() == 0 ? "0" : quotient.stripTrailingZeros().toPlainString();
  }
}
