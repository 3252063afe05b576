package org.jawroom.tables.cell;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A length known within bounds: {@code 50..60}, {@code 50 to 60}, {@code at most 60}, {@code <=
 * 60}, {@code at least 50}, {@code >= 50}, {@code 60 ± 2}, {@code 60 +- 2}. A unit after the last
 * number holds for both; each may have its own.
 *
 * @param lo the least it can be, empty if there is none; {@code hi} the greatest likewise
 */
public record LengthRange(Optional<Lengths.Read> lo, Optional<Lengths.Read> hi) {
  private static final Pattern AT_MOST = Pattern.compile("(?i)(?:at most|<=|\u2264) ?(.+)");
  private static final Pattern AT_LEAST = Pattern.compile("(?i)(?:at least|>=|\u2265) ?(.+)");
  private static final Pattern BETWEEN =
      Pattern.compile("(?i)(.*?) ?(?:\\.\\.+|\u2026| to ) ?(.*)");
  private static final Pattern ABOUT = Pattern.compile("(.*?) ?(?:\u00b1|\\+/?-) ?(.*)");
  private static final Pattern HYPHEN =
      Pattern.compile("([\\d.,]+(?: ?[a-zA-Z\"\u2033]+)?) ?- ?([\\d.,]+(?: ?[a-zA-Z\"\u2033]+)?)");

  /** Whether a text is meant as a range. */
  public static boolean isRange(String text) {
    if (Numerals.isBare(text)) {
      return false;
    }
    String plain = CellText.plain(text);
    return AT_MOST.matcher(plain).matches()
        || AT_LEAST.matcher(plain).matches()
        || BETWEEN.matcher(plain).matches()
        || ABOUT.matcher(plain).matches();
  }

  /** What to write for two numbers with a hyphen between; empty for any other text. */
  public static Optional<String> hyphenated(String text) {
    if (Numerals.isBare(text)) {
      return Optional.empty();
    }
    Matcher parts = HYPHEN.matcher(CellText.plain(text));
    return parts.matches() ? Optional.of(parts.group(1) + ".." + parts.group(2)) : Optional.empty();
  }

  /**
   * Parses a text that {@link #isRange}.
   *
   * @param unit of bare numbers
   * @param comma whether the decimal sign is a comma rather than a point
   */
  public static LengthRange parse(String text, Unit unit, boolean comma) throws BadCell {
    String plain = CellText.plain(text);
    Matcher most = AT_MOST.matcher(plain);
    if (most.matches()) {
      return new LengthRange(Optional.empty(), Optional.of(one(most.group(1), unit, comma)));
    }
    Matcher least = AT_LEAST.matcher(plain);
    if (least.matches()) {
      return new LengthRange(Optional.of(one(least.group(1), unit, comma)), Optional.empty());
    }
    Matcher between = BETWEEN.matcher(plain);
    if (between.matches()) {
      return ofEnds(both(between, unit, comma));
    }
    Matcher about = ABOUT.matcher(plain);
    if (about.matches()) {
      return ofMiddle(both(about, unit, comma));
    }
    throw new IllegalArgumentException("not a range: " + text);
  }

  private record Both(Lengths.Read first, Lengths.Read last) {}

  private static Both both(Matcher parts, Unit unit, boolean comma) throws BadCell {
    Lengths.Read last = one(parts.group(2), unit, comma);
    Lengths.Read first = one(parts.group(1), last.bare() ? unit : last.unit(), comma);
    if (last.bare() && !first.bare()) {
      throw new BadCell(
          "has a unit after its first number only; write it after the last, where it holds for both");
    }
    // The unit after the last holds for both, so that neither is bare.
    return new Both(
        new Lengths.Read(first.value(), last.bare(), first.number(), first.unit()), last);
  }

  private static Lengths.Read one(String text, Unit unit, boolean comma) throws BadCell {
    if (isRange(text)) {
      throw new BadCell("has more than two numbers; write the least and the greatest, as 50..60");
    }
    if (text.isEmpty()) {
      throw new BadCell("lacks a number; write 50..60, at most 60 or at least 50");
    }
    try {
      return Lengths.parse(text, unit, comma);
    } catch (BadCell bad) {
      throw new BadCell("has " + text + ", which " + bad.getMessage());
    }
  }

  private static LengthRange ofEnds(Both both) throws BadCell {
    if (both.first.value() > both.last.value()) {
      throw new BadCell("begins above its end; write the smaller number first");
    }
    return new LengthRange(Optional.of(both.first), Optional.of(both.last));
  }

  /** A middle and how far off it either way. */
  private static LengthRange ofMiddle(Both both) throws BadCell {
    if (both.last.value() < 0) {
      throw new BadCell("has a negative amount after its sign");
    }
    return new LengthRange(
        Optional.of(moved(both.first, -both.last.value())),
        Optional.of(moved(both.first, both.last.value())));
  }

  private static Lengths.Read moved(Lengths.Read read, long by) {
    return new Lengths.Read(read.value() + by, read.bare(), read.number(), read.unit());
  }
}
