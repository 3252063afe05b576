package org.jawroom.tables.source.grid;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jawroom.tables.schema.TableSpec;

/** Collects the tables of one input, and reports duplicates as faults. */
public final class GatheredTables {
  public final Map<TableSpec, Grid> grids = new EnumMap<>(TableSpec.class);
  public final Set<TableSpec> broken = EnumSet.noneOf(TableSpec.class);
  public final CellBudget room;
  private final Map<TableSpec, String> origins = new EnumMap<>(TableSpec.class);
  private final FaultList faults;

  public GatheredTables(FaultList faults, CellBudget room) {
    this.faults = faults;
    this.room = room;
  }

  /** Whether {@code origin} is the first of its table; if not, that is a fault. */
  public boolean isFirst(TableSpec table, String origin) {
    String first = origins.putIfAbsent(table, origin);
    if (first != null) {
      faults.add(table, origin, "", "is the same table as " + first + "; keep one of the two");
    }
    return first == null;
  }

  public boolean has(TableSpec table) {
    return origins.containsKey(table);
  }

  /**
   * Refuses a name that resembles a table's; call it when all tables are read.
   *
   * @param right what to do if it is that table
   */
  public void refuseNearly(TableSpec table, String origin, String right) {
    String otherwise = "; if not, move it away or give it a name unlike a table's";
    faults.add(
        table,
        origin,
        "",
        "is it "
            + table.tableName()
            + "? It was not read; "
            + (has(table) ? "keep either it or " + origins.get(table) : "if so, " + right)
            + otherwise);
    if (!has(table)) {
      broken.add(table);
    }
  }

  /** Adds what could be read of a table, and whether that is all of it. */
  public void add(TableSpec table, Optional<Grid> grid, boolean whole) {
    grid.ifPresent(found -> grids.put(table, found));
    if (!whole) {
      broken.add(table);
    }
  }
}
