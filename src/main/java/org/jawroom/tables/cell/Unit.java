package org.jawroom.tables.cell;

import java.util.Locale;
import java.util.Optional;

/** The units in which a length may be written. */
public enum Unit {
  MM("mm", "millimetres", 1_000_000L),
  CM("cm", "centimetres", 10_000_000L),
  M("m", "metres", 1_000_000_000L),
  IN("in", "inches", 25_400_000L);

  private final String sign;
  private final String plural;
  private final long nanometres;

  Unit(String sign, String plural, long nanometres) {
    this.sign = sign;
    this.plural = plural;
    this.nanometres = nanometres;
  }

  /** The sign after a number. */
  public String sign() {
    return sign;
  }

  /** The plural in a sentence. */
  public String plural() {
    return plural;
  }

  long nanometres() {
    return nanometres;
  }

  /** Finds a unit by name or sign, ignoring case. */
  public static Optional<Unit> named(String text) {
    return switch (CellText.trimmed(text).toLowerCase(Locale.ROOT)) {
      case "mm" -> Optional.of(MM);
      case "cm" -> Optional.of(CM);
      case "m" -> Optional.of(M);
      case "in", "in.", "inch", "inches", "\"", "\u2033", "\u201c", "\u201d" -> Optional.of(IN);
      default -> Optional.empty();
    };
  }
}
