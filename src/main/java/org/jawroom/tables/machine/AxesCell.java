package org.jawroom.tables.machine;

import java.util.Locale;
import java.util.Optional;
import org.jawroom.shop.machine.Axes;
import org.jawroom.tables.row.Row;

/** Reads which axes carry a table or a guard. */
public final class AxesCell {
  private AxesCell() {}

  private static final Axes SADDLE = new Axes(false, true, false);
  private static final Axes HEAD = new Axes(false, false, true);

  /**
   * The axes that carry the table of a machine's row; empty, with a fault, if they cannot be read.
   */
  public static Optional<Axes> tableMoves(Row row) {
    String word = word(row, "table_moves");
    if (word.equals("none")) {
      return Optional.of(Axes.NONE);
    }
    Optional<Axes> axes = letters(word);
    if (axes.isEmpty() && !word.isEmpty()) {
      row.fault(
          "table_moves", "is not what moves a table; write letters out of x, y, z, as xy, or none");
    }
    return axes;
  }

  /**
   * The axes that carry the guard of a row.
   *
   * @param table those that carry the table; empty if unknown
   */
  static Optional<Axes> carriedBy(Row row, Optional<Axes> table) {
    String word = word(row, "carried_by");
    switch (word) {
      case "", "frame":
        return Optional.of(Axes.NONE);
      case "saddle":
        return Optional.of(SADDLE);
      case "table":
        return table;
      case "head":
        if (table.isPresent() && table.get().z()) {
          row.fault(
              "carried_by",
              "is not possible where the table itself moves along z, since the head stands"
                  + " still there; write frame");
        }
        return Optional.of(HEAD);
      default:
        Optional<Axes> axes = letters(word);
        if (axes.isEmpty()) {
          row.fault(
              "carried_by",
              "is not what can carry a guard; write frame, saddle, head, table, or letters out of x, y, z");
        }
        return axes;
    }
  }

  private static String word(Row row, String column) {
    return row.text(column).toLowerCase(Locale.ROOT);
  }

  /** Each letter at most once, at least one, no separators. */
  private static Optional<Axes> letters(String word) {
    boolean axes = word.matches("[xyz]{1,3}") && word.chars().distinct().count() == word.length();
    return axes
        ? Optional.of(new Axes(word.contains("x"), word.contains("y"), word.contains("z")))
        : Optional.empty();
  }
}
