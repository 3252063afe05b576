package org.jawroom.report;

/** Makes text from tables harmless where it is going. */
final class PlainText {

  /**
   * What spreadsheets take for the start of a formula, or skip before one; the wide forms too,
   * which some of them read as the narrow ones (OWASP, CSV Injection).
   */
  private static final String FORMULA_STARTS = "=+-@\t\r\n\uFF1D\uFF0B\uFF0D\uFF20";

  /** The most characters that a cell of a workbook may hold. */
  private static final int LONGEST_CELL = 32_767;

  private PlainText() {}

  /** For a CSV: a leading apostrophe before anything that could start a formula. */
  static String harmless(String text) {
    return !text.isEmpty() && FORMULA_STARTS.indexOf(text.charAt(0)) >= 0 ? "'" + text : text;
  }

  /** For a cell of a workbook: cut where it would be refused. */
  static String forCell(String text) {
    return text.length() <= LONGEST_CELL ? text : text.substring(0, LONGEST_CELL - 1) + "…";
  }

  /** For a terminal: nothing that could steer it or reverse what it shows. */
  static String forTerminal(String text) {
    StringBuilder shown = new StringBuilder();
    text.codePoints()
        .map(c -> Character.isISOControl(c) || Character.getType(c) == Character.FORMAT ? '?' : c)
        .forEach(shown::appendCodePoint);
    return shown.toString();
  }
}
