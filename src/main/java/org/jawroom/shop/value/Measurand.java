package org.jawroom.shop.value;

import java.util.Set;

/**
 * One length that somebody measures and writes into the tables: a row and a column.
 *
 * @param table the table, such as {@code machines}
 * @param name the machine or the vise that the row belongs to
 * @param item the guard, the part or the bolt of a mount, if the row is one of these; else empty
 * @param column the column, such as {@code rear_gap}
 */
public record Measurand(String table, String name, String item, String column) {
  private static final Set<String> OF_MACHINES = Set.of("machines", "guards");

  public Measurand {
    Require.named("table", table);
    Require.named("row", name);
    Require.named("column", column);
  }

  /** A column in the row of a machine or a vise itself. */
  public static Measurand of(Column column, String name) {
    return new Measurand(column.table(), name, "", column.column());
  }

  /** A column in the row of a guard, or in that of a bolt of a mount. */
  public static Measurand of(Column column, String name, String item) {
    return new Measurand(column.table(), name, item, column.column());
  }

  /** The column as files print it, with the item that it belongs to: {@code gap (sill)}. */
  public String reading() {
    return item.isEmpty() ? column : column + " (" + item + ")";
  }

  /** Whether it stands in a row of the machine or of the vise of these names. */
  public boolean isOf(String machine, String vise) {
    return name.equals(isOfMachine() ? machine : vise);
  }

  /** Whether it stands in a row of a machine or of one of its guards; else of a vise. */
  public boolean isOfMachine() {
    return OF_MACHINES.contains(table);
  }

  /** The same with its table: {@code guards.gap (sill)}. */
  public String path() {
    return table + "." + reading();
  }
}
