package org.jawroom.tables.source;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jawroom.tables.schema.TableSpec;
import org.jawroom.tables.source.grid.CellBudget;
import org.jawroom.tables.source.grid.FaultList;
import org.jawroom.tables.source.grid.FileRead;
import org.jawroom.tables.source.grid.Grid;
import org.jawroom.tables.source.grid.LeftAlone;
import org.jawroom.tables.source.grid.UnreadableInput;

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
  public static Source read(Path input, FaultList faults, CellBudget room) throws UnreadableInput {
    if (Files.isDirectory(input)) {
      return CsvFolder.read(input, faults, room);
    }
    if (!Files.exists(input)) {
      throw new UnreadableInput(input + " could not be read: there is no such file or folder");
    }
    return Workbooks.read(input, faults, room);
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
}
