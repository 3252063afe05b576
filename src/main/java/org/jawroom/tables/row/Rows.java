package org.jawroom.tables.row;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.jawroom.tables.cell.CellText;
import org.jawroom.tables.schema.CellKind;
import org.jawroom.tables.schema.ColumnSpec;
import org.jawroom.tables.schema.TableSpec;
import org.jawroom.tables.source.grid.Cell;
import org.jawroom.tables.source.grid.Grid;

/** The rows of one table, its header row matched with the expected columns. */
public final class Rows {
  /** The largest number of surplus cells reported one by one; beyond it only their number is. */
  private static final int MOST_REPORTED = 20;

  private final TableSpec table;
  private final Ledger ledger;
  private final Map<String, Integer> places = new HashMap<>();
  private final Set<String> missing = new HashSet<>();

  private Rows(TableSpec table, Ledger ledger) {
    this.table = table;
    this.ledger = ledger;
  }

  /** The rows to read; worked examples are left out and noted. Records faults of the header row. */
  public static List<Row> of(TableSpec table, Ledger ledger) {
    return new Rows(table, ledger).read();
  }

  private List<Row> read() {
    Optional<Grid> grid = ledger.source.grid(table);
    if (grid.isEmpty()) {
      if (table.isRequired() && !ledger.source.broken().contains(table)) {
        tableFault("is missing; a shop needs machines and vises");
      }
      return List.of();
    }
    matchHeader(grid.get());
    List<Row> rows = new ArrayList<>();
    boolean worked = false;
    for (Grid.Row cells : grid.get().rows()) {
      Row row = new Row(table, grid.get().origin(), cells, places, missing, ledger);
      if (isWorked(row)) {
        worked = true;
        ledger.note(Note.Kind.WORKED_ROW, row, "skipped: a worked example");
      } else {
        refuseStrays(grid.get(), cells);
        rows.add(row);
      }
    }
    if (rows.isEmpty() && table.isRequired() && !ledger.source.broken().contains(table)) {
      tableFault(
          worked
              ? "holds nothing but worked examples"
              : "holds no rows; a shop needs at least one");
    }
    return rows;
  }

  private void matchHeader(Grid grid) {
    table.columns().stream().filter(this::mustBeThere).map(ColumnSpec::name).forEach(missing::add);
    int filled = grid.header().cells().size();
    if (filled > MOST_REPORTED + table.columns().size()) {
      String message = "has " + filled + " filled cells, far more than the table has columns";
      ledger.faults.add(table, grid.origin(), grid.header().number(), "", "", message);
      return;
    }
    if (isReport(grid)) {
      String message =
          "is the report of " + table.tableName() + ", not the table of them; take it away";
      ledger.faults.add(table, grid.origin(), "", message);
      return;
    }
    grid.header().cells().forEach((place, cell) -> matchColumn(grid, place, cell));
    missing.removeAll(places.keySet());
    if (places.containsKey("slot_positions")) {
      missing.remove("slot_count");
    }
    for (String column : missing) {
      ledger.faults.add(
          table, grid.origin(), grid.header().number(), column, "", "is missing from the header");
    }
  }

  /**
   * The tables of jobs, checks, standing and sets and the reports on them have the same file names.
   */
  private boolean isReport(Grid grid) {
    Optional<String> only =
        switch (table) {
          case JOBS -> Optional.of("shortfall_reason");
          case CHECKS, STANDING -> Optional.of("says");
          case SETS -> Optional.of("least_mm");
          default -> Optional.empty();
        };
    return only.isPresent()
        && grid.header().cells().values().stream().anyMatch(cell -> cell.text().equals(only.get()));
  }

  private void matchColumn(Grid grid, int place, Cell cell) {
    String header = CellText.trimmed(cell.text());
    Optional<ColumnSpec> column = table.column(header);
    String message = cell.trouble();
    if (message.isEmpty() && column.isEmpty()) {
      List<String> known = table.columns().stream().map(ColumnSpec::name).toList();
      message =
          "is not a column of "
              + table.tableName()
              + ledger.hint(ColumnSpec.normal(header), () -> known);
    }
    if (message.isEmpty() && places.putIfAbsent(column.get().name(), place) != null) {
      message = "is there twice; keep one of the two columns";
    }
    if (!message.isEmpty()) {
      ledger.faults.add(table, grid.origin(), grid.header().number(), "", header, message);
    }
  }

  /** A settings table without values would silently set nothing. */
  private boolean mustBeThere(ColumnSpec column) {
    return column.isRequired() || table == TableSpec.SETTINGS;
  }

  private void refuseStrays(Grid grid, Grid.Row cells) {
    List<Cell> strays =
        cells.cells().entrySet().stream()
            .filter(cell -> !grid.header().cells().containsKey(cell.getKey()))
            .map(Map.Entry::getValue)
            .toList();
    strays.stream()
        .limit(MOST_REPORTED)
        .forEach(cell -> refuseStray(grid, cells, cell.text(), "stands under no header"));
    if (strays.size() > MOST_REPORTED) {
      int more = strays.size() - MOST_REPORTED;
      refuseStray(grid, cells, "", "has " + more + " more cells under no header");
    }
  }

  private void refuseStray(Grid grid, Grid.Row cells, String found, String message) {
    ledger.faults.add(table, grid.origin(), cells.number(), "", found, message);
  }

  /** Whether it is a worked example, or refers to one. */
  private boolean isWorked(Row row) {
    Stream<String> named =
        table.columns().stream()
            .filter(column -> column.kind() == CellKind.NAME)
            .map(column -> row.raw(column.name()));
    Stream<String> listed =
        table == TableSpec.JOBS ? Arrays.stream(row.raw("machines").split(";")) : Stream.empty();
    return Stream.concat(named, listed).anyMatch(TableSpec::isWorked);
  }

  private void tableFault(String message) {
    ledger.faults.add(table, ledger.source.originOf(table), "", message);
  }
}
