package org.jawroom.report.format;

import java.math.BigDecimal;
import org.jawroom.geometry.Length;

/** The unit in which people see lengths, and its rounding step. */
public enum PeopleUnit {
  /** Millimetres to 0.1. */
  MM("mm", "millimetres", Length.MM / 10, 1),
  /** Inches to 0.01. */
  INCH("in", "inches", Length.INCH / 100, 2);

  private final String word;
  private final String plural;
  private final long grain;
  private final int decimals;

  PeopleUnit(String word, String plural, long grain, int decimals) {
    this.word = word;
    this.plural = plural;
    this.grain = grain;
    this.decimals = decimals;
  }

  /** {@code mm} or {@code in}. */
  public String word() {
    return word;
  }

  /** {@code millimetres} or {@code inches}. */
  public String plural() {
    return plural;
  }

  /** One unit, in half-nanometres. */
  public long length() {
    return this == MM ? Length.MM : Length.INCH;
  }

  /** Ten times finer and without trailing zeros, for an amount to set by: {@code 38.13}. */
  public String fine(long length, Rounding rounding) {
    return plain(decimal(length, rounding, grain / 10, decimals + 1));
  }

  /** Ten times finer with all decimals, for a column of figures: {@code 38.10}. */
  public String fineText(long length, Rounding rounding) {
    return decimal(length, rounding, grain / 10, decimals + 1).toPlainString();
  }

  /** The rounded number, for a cell with the format {@link #numberFormat}. */
  public double number(long length, Rounding rounding) {
    return decimal(length, rounding).doubleValue();
  }

  /** Ten times finer, for a cell with the format {@link #numberFormat} and one more decimal. */
  public double fineNumber(long length, Rounding rounding) {
    return decimal(length, rounding, grain / 10, decimals + 1).doubleValue();
  }

  /** With all decimals: {@code 12.0}. */
  public String text(long length, Rounding rounding) {
    return decimal(length, rounding).toPlainString();
  }

  /** Without trailing zeros, for use within a sentence: {@code 12}. */
  public String brief(long length, Rounding rounding) {
    return plain(decimal(length, rounding));
  }

  /** Rounds to the displayed step; the result is in half-nanometres. */
  public long rounded(long length, Rounding rounding) {
    return rounding.count(length, grain) * grain;
  }

  /** The spreadsheet number format that shows every decimal of the rounded number. */
  public String numberFormat() {
    return "0." + "0".repeat(decimals);
  }

  private BigDecimal decimal(long length, Rounding rounding) {
    return decimal(length, rounding, grain, decimals);
  }

  private static BigDecimal decimal(long length, Rounding rounding, long grain, int decimals) {
    return BigDecimal.valueOf(rounding.count(length, grain), decimals);
  }

  private static String plain(BigDecimal value) {
    BigDecimal stripped = value.stripTrailingZeros();
    return (stripped.scale() < 0 ? stripped.setScale(0) : stripped).toPlainString();
  }
}
