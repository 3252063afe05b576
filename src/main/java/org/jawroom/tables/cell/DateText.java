package org.jawroom.tables.cell;

import java.util.regex.Pattern;

/** Tells the dates that spreadsheets make of fractions. */
public final class DateText {
  private DateText() {}

  /** Goes on from the text found. */
  public static final String MESSAGE =
      "is a date, as spreadsheets make of fractions; type 0.25, or '1/4 to keep it as text";

  private static final String MONTH =
      "(?:jan|feb|fev|f\u00e9v|mar|m\u00e4r|mrz|apr|avr|may|mai|jun|jui|jul|aug|ao\u00fb|sep|oct|okt|nov"
          + "|dec|dez|d\u00e9c)\\p{L}*\\.?";

  private static final Pattern DATE =
      Pattern.compile(
          "(?:\\d{1,2}([-/.]) ?\\d{1,2}\\1 ?\\d{2,4}"
              + "|\\d{4}([-/.])\\d{1,2}\\2\\d{1,2}"
              + "|\\d{1,2}[-/. ]*"
              + MONTH
              + "(?:[-/. ]*\\d{2,4})?"
              + "|"
              + MONTH
              + "[-/. ]*\\d{1,4}(?:, ?\\d{4})?)"
              + "(?:[ T]\\d.*)?",
          Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);

  static boolean isDate(String plain) {
    return DATE.matcher(plain).matches();
  }
}
