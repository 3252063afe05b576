package org.jawroom.tables.source.grid;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.jawroom.tables.schema.ColumnSpec;
import org.jawroom.tables.schema.TableSpec;

/**
 * Collects faults, sorted by tables, rows and columns. Beyond what anybody reads it only counts
 * them.
 */
public final class FaultList {

  private static final int MOST = 1_000;

  private record Placed(int table, int row, int column, Fault fault) {}

  private final List<Placed> placed = new ArrayList<>();
  private int more;

  /** Adds a fault of one cell or, with an empty {@code column}, of one row. */
  public void add(
      TableSpec table, String origin, int row, String column, String found, String message) {
    if (placed.size() == MOST) {
      more++;
      return;
    }
    placed.add(
        new Placed(
            table.ordinal(),
            row,
            columnOrder(table, column),
            new Fault(
                origin,
                row == 0 ? OptionalInt.empty() : OptionalInt.of(row),
                column.isEmpty() ? Optional.empty() : Optional.of(column),
                found,
                message)));
  }

  /** Adds a fault of a whole file, sheet or option. */
  public void add(TableSpec table, String origin, String found, String message) {
    add(table, origin, 0, "", found, message);
  }

  public boolean isEmpty() {
    return placed.isEmpty();
  }

  public List<Fault> sorted() {
    Stream<Fault> sorted =
        placed.stream()
            .sorted(
                Comparator.comparingInt(Placed::table)
                    .thenComparingInt(Placed::row)
                    .thenComparingInt(Placed::column))
            .map(Placed::fault);
    return more == 0 ? sorted.toList() : Stream.concat(sorted, Stream.of(rest())).toList();
  }

  private Fault rest() {
    return new Fault(
        "all tables",
        OptionalInt.empty(),
        Optional.empty(),
        "",
        more + " more faults are not listed");
  }

  private static int columnOrder(TableSpec table, String column) {
    List<ColumnSpec> columns = table.columns();
    for (int i = 0; i < columns.size(); i++) {
      if (columns.get(i).name().equals(column)) {
        return i;
      }
    }
    return -1;
  }
}
