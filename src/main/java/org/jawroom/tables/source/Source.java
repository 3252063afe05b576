package org.jawroom.tables.source;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jawroom.tables.schema.TableSpec;

/**
 * The whole content of an input.
 *
 * @param grids the tables found, each once
 * @param broken the tables that exist but could not be read completely; faults give the reasons
 * @param files the files read
 * @param leftAlone files, sheets and macros that were not read
 * @param workbook whether it is a workbook rather than a folder
 */
public record Source(
    Map<TableSpec, Grid> grids,
    Set<TableSpec> broken,
    List<FileRead> files,
    List<LeftAlone> leftAlone,
    boolean workbook) {

  public Source {
    files = List.copyOf(files);
    leftAlone = List.copyOf(leftAlone);
  }

  /** Reads a folder of CSV files or an XLSX workbook; a missing table is not yet a fault. */
  public static Source read(Path input, FaultList faults) throws UnreadableInput {
    if (Files.isDirectory(input)) {
      return CsvFolder.read(input, faults);
    }
    if (!Files.exists(input)) {
      throw new UnreadableInput(input + " could not be read: there is no such file or folder");
    }
    return Workbooks.read(input, faults);
  }

  public Optional<Grid> grid(TableSpec table) {
    return Optional.ofNullable(grids.get(table));
  }

  /** For people: the name of a table in this kind of input. */
  public String originOf(TableSpec table) {
    return grid(table)
        .map(Grid::origin)
        .orElse(workbook ? "sheet " + table.tableName() : table.tableName() + ".csv");
  }

  /** Collects the tables of one input, and reports duplicates as faults. */
  static final class Gathering {
    final Map<TableSpec, Grid> grids = new EnumMap<>(TableSpec.class);
    final Set<TableSpec> broken = EnumSet.noneOf(TableSpec.class);
    final CellBudget room = new CellBudget();
    private final Map<TableSpec, String> origins = new EnumMap<>(TableSpec.class);
    private final FaultList faults;

    Gathering(FaultList faults) {
      this.faults = faults;
    }

    /** Whether {@code origin} is the first of its table; if not, that is a fault. */
    boolean isFirst(TableSpec table, String origin) {
      String first = origins.putIfAbsent(table, origin);
      if (first != null) {
        faults.add(table, origin, "", "is the same table as " + first + "; keep one of the two");
      }
      return first == null;
    }

    boolean has(TableSpec table) {
      return origins.containsKey(table);
    }

    /**
     * Refuses a name that resembles a table's; call it when all tables are read.
     *
     * @param right what to do if it is that table
     */
    void refuseNearly(TableSpec table, String origin, String right) {
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
    void add(TableSpec table, Optional<Grid> grid, boolean whole) {
      grid.ifPresent(found -> grids.put(table, found));
      if (!whole) {
        broken.add(table);
      }
    }
  }
}
