package org.jawroom.tables.source;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import org.jawroom.geometry.Length;
import org.jawroom.shop.value.Measurand;
import org.jawroom.tables.cell.name.Names;
import org.jawroom.tables.schema.ColumnSpec;
import org.jawroom.tables.schema.TableSpec;
import org.jawroom.tables.source.grid.Cell;
import org.jawroom.tables.source.grid.Grid;

/** An input with other lengths in some of its cells, as if they were typed in. */
public final class CorrectedTables {
  private final Map<TableSpec, Grid> grids;

  private CorrectedTables(Source source) {
    this.grids = new EnumMap<>(TableSpec.class);
    grids.putAll(source.grids());
  }

  /**
   * A copy of a source; a reading that has no cell there is left out.
   *
   * @param lengths half-nanometres
   */
  public static Source of(Source source, Map<Measurand, Long> lengths) {
    CorrectedTables tables = new CorrectedTables(source);
    lengths.forEach(tables::put);
    return new Source(
        tables.grids, source.broken(), source.files(), source.leftAlone(), source.workbook());
  }

  private void put(Measurand reading, long length) {
    for (TableSpec table : TableSpec.values()) {
      if (table.tableName().equals(reading.table()) && grids.containsKey(table)) {
        grids.put(table, with(grids.get(table), reading, Cell.standard(text(length))));
      }
    }
  }

  private static Grid with(Grid grid, Measurand reading, Cell cell) {
    Grid.Row header = grid.header();
    NavigableMap<Integer, Cell> headings = new TreeMap<>(header.cells());
    int column = column(grid, reading.column()).orElse(headings.lastKey() + 1);
    headings.putIfAbsent(column, Cell.text(reading.column()));
    List<Grid.Row> rows = new ArrayList<>();
    int alike = 0;
    for (Grid.Row row : grid.rows()) {
      boolean isOne = isNamed(grid, row, reading);
      alike += isOne ? 1 : 0;
      rows.add(isOne && isCounted(reading, alike) ? with(row, column, cell) : row);
    }
    return new Grid(
        grid.table(),
        grid.origin(),
        new Grid.Row(header.number(), headings.lastKey() + 1, headings),
        rows);
  }

  private static Grid.Row with(Grid.Row row, int column, Cell cell) {
    NavigableMap<Integer, Cell> cells = new TreeMap<>(row.cells());
    cells.put(column, cell);
    return new Grid.Row(row.number(), Math.max(row.width(), column + 1), cells);
  }

  /** Whether a row is of the machine or vise, and of the guard, part or mount, of a reading. */
  private static boolean isNamed(Grid grid, Grid.Row row, Measurand reading) {
    List<ColumnSpec> columns = grid.table().columns();
    return isText(grid, row, columns.get(0).name(), reading.name())
        && (reading.item().isEmpty()
            || isText(grid, row, columns.get(1).name(), itemName(reading)));
  }

  private static boolean isText(Grid grid, Grid.Row row, String column, String text) {
    return column(grid, column)
        .map(row.cells()::get)
        .filter(cell -> Names.key(cell.text()).equals(Names.key(text)))
        .isPresent();
  }

  /** The item of a bolt is the name of its mount and, after a space, its number from 1. */
  private static String itemName(Measurand reading) {
    return isBolt(reading)
        ? reading.item().substring(0, reading.item().lastIndexOf(' '))
        : reading.item();
  }

  private static boolean isCounted(Measurand reading, int number) {
    return !isBolt(reading) || reading.item().endsWith(" " + number);
  }

  private static boolean isBolt(Measurand reading) {
    return reading.table().equals(TableSpec.MOUNTS.tableName());
  }

  private static Optional<Integer> column(Grid grid, String name) {
    return grid.header().cells().entrySet().stream()
        .filter(
            heading ->
                grid.table()
                    .column(heading.getValue().text())
                    .filter(column -> column.name().equals(name))
                    .isPresent())
        .map(Map.Entry::getKey)
        .findFirst();
  }

  /** Exact: a millimetre is 2 000 000 half-nanometres. */
  private static String text(long length) {
    return BigDecimal.valueOf(length).divide(BigDecimal.valueOf(Length.MM)).toPlainString() + " mm";
  }
}
