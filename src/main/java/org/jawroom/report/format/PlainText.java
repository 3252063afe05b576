package org.jawroom.report.format;

import java.util.regex.Pattern;

/** Makes text from tables harmless where it is going. */
public final class PlainText {

  /**
   * What spreadsheets take for the start of a formula; the wide forms too, which some of them read
   * as the narrow ones. They skip spaces, and quotes once a cell is cut out of its line; and those
   * that split cells at a semicolon see another cell after it (OWASP, CSV Injection).
   */
  private static final Pattern FORMULA =
      Pattern.compile("((?:^|;)[\\s\\p{Z}\"']*)([=+\\-@\uFF1D\uFF0B\uFF0D\uFF20])");

  private static final String LINE_STARTS = "\t\r\n";

  /** The most characters that a cell of a workbook may hold. */
  private static final int LONGEST_CELL = 32_767;

  private PlainText() {}

  /** For a CSV: an apostrophe before anything that could start a formula, as text shown. */
  public static String harmless(String text) {
    if (text.isEmpty() || isPlain(text)) {
      return text;
    }
    String shown = shown(text, LINE_STARTS);
    String inner = FORMULA.matcher(shown).replaceAll("$1'$2");
    return LINE_STARTS.indexOf(inner.charAt(0)) >= 0 ? "'" + inner : inner;
  }

  /**
   * Most text by far: it begins with a letter or digit of ASCII and goes on in it, no semicolon.
   */
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

  /** For a cell of a workbook: as text shown, cut where it would be refused. */
  public static String forCell(String text) {
    String shown = shown(text, "\n");
    return shown.length() <= LONGEST_CELL ? shown : shown.substring(0, LONGEST_CELL - 1) + "…";
  }

  /** For a terminal: nothing that could steer it or reverse what it shows. */
  public static String forTerminal(String text) {
    return shown(text, "");
  }

  /**
   * A question mark for each character that steers, reverses or hides text; joiners, which scripts
   * need, stay.
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
