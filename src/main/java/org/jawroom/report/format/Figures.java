package org.jawroom.report.format;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.jawroom.geometry.Length;

/** Exact figures as {@code pairings.csv} has them: a decimal point and always three decimals. */
public final class Figures {
  public static final long MICROMETRE = Length.MM / 1000;

  private Figures() {}

  /** Half-nanometres as millimetres to 0.001. */
  public static String millimetres(long length, Rounding rounding) {
    return BigDecimal.valueOf(rounding.count(length, MICROMETRE), 3).toPlainString();
  }

  /** Kilograms to 0.001, rounded up. */
  public static String kilogramsUp(BigDecimal mass) {
    return mass.setScale(3, RoundingMode.CEILING).toPlainString();
  }

  /** Kilograms to 0.001, rounded down. */
  public static String kilograms(BigDecimal mass) {
    return mass.setScale(3, RoundingMode.FLOOR).toPlainString();
  }
}
