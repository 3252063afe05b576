package org.jawroom.report.format;

import java.util.regex.Pattern;

/** Makes text from tables harmless at its destination. */
public final class PlainText {

  /**
   * Characters that spreadsheets read as the start of a formula; also the fullwidth forms, which
   * some of them read as the ASCII ones. Spreadsheets skip leading spaces, and quotes once a cell
   * is cut out of its line; those that split cells at a semicolon see another cell after it (OWASP,
   * CSV Injection).
   */
  private static final Pattern FORMULA =
      Pattern.compile("((?:^|;)[\\s\\p{Z}\"']*)([=+\\-@\uFF1D\uFF0B\uFF0D\uFF20])");

  private static final String LINE_STARTS = "\t\r\n";

  /** The largest number of characters in a cell of a workbook. */
  private static final int LONGEST_CELL = 32_767;

  private PlainText() {}

  /**
   * For a CSV: puts an apostrophe before anything that could start a formula; characters as in
   * displayed text.
   */
  public static String harmless(String text) {
    if (text.isEmpty() || isPlain(text)) {
      return text;
    }
    String shown = shown(text, LINE_STARTS);
    String inner = FORMULA.matcher(shown).replaceAll("$1'$2");
    return LINE_STARTS.indexOf(inner.charAt(0)) >= 0 ? "'" + inner : inner;
  }

  /** Fast path for most text: only ASCII, starting with a letter or digit, without a semicolon. */
  private static boolean isPlain(String text) {
    char first = text.charAt(0);
    if (first > 'z' || !Character.isLetterOrDigit(first)) {
      return false;
    }
    for (int i = 1; i < text.length(); i++) {
      char letter = text.charAt(i);
      if (letter < ' ' || letter > '~' || letter == ';') {
        return false;
      }
    }
    return true;
  }

  /** For a cell of a workbook: displayed text, cut at the largest permitted length. */
  public static String forCell(String text) {
    String shown = shown(text, "\n");
    return shown.length() <= LONGEST_CELL ? shown : shown.substring(0, LONGEST_CELL - 1) + "…";
  }

  /** For a terminal: removes what could control it or reverse the displayed text. */
  public static String forTerminal(String text) {
    return shown(text, "");
  }

  /**
   * Replaces each character that controls, reverses or hides text by a question mark; joiners,
   * which scripts need, stay.
   */
  private static String shown(String text, String allowed) {
    StringBuilder shown = new StringBuilder(text.length());
    text.codePoints()
        .map(letter -> isShown(letter) || allowed.indexOf(letter) >= 0 ? letter : '?')
        .forEach(shown::appendCodePoint);
    return shown.toString();
  }

  private static boolean isShown(int letter) {
    return switch (Character.getType(letter)) {
      case Character.CONTROL,
          Character.SURROGATE,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR ->
          false;
      case Character.FORMAT -> letter == 0x200C || letter == 0x200D;
      default -> (letter & 0xFFFE) != 0xFFFE;
    };
  }
}
