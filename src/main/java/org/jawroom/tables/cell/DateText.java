package org.jawroom.tables.cell;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Recognizes the dates that spreadsheets make of fractions. */
public final class DateText {
  private DateText() {}

  /** Continues the text found. */
  public static final String MESSAGE =
      "is a date, as spreadsheets make of fractions; type 0.25, or '1/4 to keep it as text";

  /** The first letters of each month, in common languages of spreadsheets. */
  private static final List<String> MONTHS =
      List.of(
          "jan|ene|gen",
          "feb|fev|f\u00e9v",
          "mar|m\u00e4r|mrz",
          "apr|avr|abr",
          "may|mai|mag",
          "jun|juin|giu",
          "jul|juil|lug",
          "aug|ao\u00fb|ago",
          "sep|set",
          "oct|okt|ott",
          "nov",
          "dec|dez|d\u00e9c|dic");

  private static final String MONTH = "(?<month>" + String.join("|", MONTHS) + ")\\p{L}*\\.?";

  private static final Pattern DATE =
      Pattern.compile(
          "(?:(?<a>\\d{1,2})(?<sep>[-/.]) ?(?<b>\\d{1,2})\\k<sep> ?\\d{2,4}"
              + "|\\d{4}(?<joint>[-/.])(?<c>\\d{1,2})\\k<joint>(?<d>\\d{1,2})"
              + "|(?<e>\\d{1,2})\\. ?(?<f>\\d{1,2})\\."
              + "|\\d{4}[-/]\\d{1,2}"
              + "|\\d{1,2}[-/]\\d{4}"
              + "|(?<before>\\d{1,2})[-/. ]*"
              + MONTH
              + "(?:[-/. ]*\\d{2,4})?"
              + "|"
              + MONTH.replace("<month>", "<first>")
              + "[-/. ]*(?<after>\\d{1,4})(?:, ?\\d{4})?)"
              + "(?:[ T]\\d.*)?",
          Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);

  static boolean isDate(String plain) {
    return DATE.matcher(plain).matches();
  }

  /**
   * Refuses a date and names the fraction of an inch that it was, if that can be determined.
   *
   * @param comma whether the decimal sign is a comma, for the advice only
   */
  static void refuseFraction(String plain, boolean comma) throws BadCell {
    Matcher date = DATE.matcher(plain);
    if (!date.matches()) {
      return;
    }
    Optional<String> fraction = fraction(date);
    if (fraction.isEmpty()) {
      throw new BadCell(MESSAGE);
    }
    BigDecimal value = InchFractions.parse("", fraction.get(), Unit.IN, comma);
    throw new BadCell(
        "is a date, as spreadsheets make of fractions; for "
            + fraction.get()
            + " in type "
            + Numerals.plain(value, comma)
            + " in");
  }

  /** Day and month are the two numbers of the fraction, in either order. */
  private static Optional<String> fraction(Matcher date) {
    if (date.group("a") != null) {
      return fraction(Integer.parseInt(date.group("a")), Integer.parseInt(date.group("b")));
    }
    if (date.group("c") != null) {
      return fraction(Integer.parseInt(date.group("c")), Integer.parseInt(date.group("d")));
    }
    if (date.group("e") != null) {
      return fraction(Integer.parseInt(date.group("e")), Integer.parseInt(date.group("f")));
    }
    if (date.group("before") != null) {
      return fraction(Integer.parseInt(date.group("before")), month(date.group("month")));
    }
    return date.group("after") == null
        ? Optional.empty()
        : fraction(Integer.parseInt(date.group("after")), month(date.group("first")));
  }

  private static Optional<String> fraction(int one, int other) {
    int over = Math.min(one, other);
    int under = Math.max(one, other);
    boolean inch = over > 0 && over < under && under <= 64 && Integer.bitCount(under) == 1;
    return inch ? Optional.of(over + "/" + under) : Optional.empty();
  }

  /** 1 to 12. */
  private static int month(String beginning) {
    String wanted = beginning.toLowerCase(Locale.ROOT);
    for (int i = 0; i < MONTHS.size(); i++) {
      if (wanted.matches(MONTHS.get(i))) {
        return i + 1;
      }
    }
    throw new IllegalArgumentException("not the beginning of a month: " + beginning);
  }
}
