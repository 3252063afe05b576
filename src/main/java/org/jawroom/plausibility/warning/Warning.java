package org.jawroom.plausibility.warning;

/**
 * Something in the tables that can be true but looks wrong. It never changes a verdict.
 *
 * @param table the table it stands in: {@code machines}, {@code guards}, {@code vises}, {@code
 *     standing} or {@code sets}
 * @param row the machine, vise or set; for a guard {@code machine / guard}
 * @param column the column that looks wrong, or the first of several
 * @param text what looks wrong and what to do, one line
 */
public record Warning(
    Seriousness seriousness, String table, String row, String column, String text) {

  /** The whole warning in one line: {@code machines, knee mill, rear_gap: …}. */
  public String line() {
    return table + ", " + row + ", " + column + ": " + text;
  }

  /** The column and the text; a text that begins with the column stands by itself. */
  public String matter() {
    return text.startsWith(column) ? text : column + ": " + text;
  }

  public static Warning machine(
      Seriousness seriousness, String machine, String column, String text) {
    return new Warning(seriousness, "machines", machine, column, text);
  }

  public static Warning guard(
      Seriousness seriousness, String machine, String guard, String column, String text) {
    return new Warning(seriousness, "guards", machine + " / " + guard, column, text);
  }

  public static Warning vise(Seriousness seriousness, String vise, String column, String text) {
    return new Warning(seriousness, "vises", vise, column, text);
  }
}
