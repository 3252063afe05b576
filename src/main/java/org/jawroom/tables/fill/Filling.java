package org.jawroom.tables.fill;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.jawroom.tables.row.Notation;
import org.jawroom.tables.source.Source;
import org.jawroom.tables.source.WorkbookEdit;
import org.jawroom.tables.source.csv.CsvEdit;
import org.jawroom.tables.source.csv.FilledRow;
import org.jawroom.tables.source.grid.CellBudget;
import org.jawroom.tables.source.grid.Fault;
import org.jawroom.tables.source.grid.FaultList;
import org.jawroom.tables.source.grid.FileRead;
import org.jawroom.tables.source.grid.UnreadableInput;

/** Fills figures into a copy of the tables. */
public final class Filling {
  private final Path input;
  private final Source source;
  private final String origin;
  private final FilledCells cells;
  private final List<Fault> faults = new ArrayList<>();

  private final long heap;

  /** The files of the copy by their names, in the order read; empty if there are faults. */
  private final Map<String, byte[]> files = new LinkedHashMap<>();

  private Filling(Path input, Source source, Notation notation, String origin, long heap) {
    this.input = input;
    this.heap = heap;
    this.source = source;
    this.origin = origin;
    this.cells = new FilledCells(source, notation);
  }

  /**
   * Fills in every row, or collects the faults of all.
   *
   * @param input tables that were read without a fault
   * @param origin of the rows, for people
   * @param heap the most memory that Java has, in bytes
   */
  public static Filling of(
      Path input, Notation notation, List<FilledRow> rows, String origin, long heap)
      throws UnreadableInput, IOException {
    Filling filling =
        new Filling(
            input,
            Source.read(input, new FaultList(), new CellBudget(heap)),
            notation,
            origin,
            heap);
    filling.fill(rows);
    return filling;
  }

  public List<Fault> faults() {
    return List.copyOf(faults);
  }

  public Map<String, byte[]> files() {
    return files;
  }

  private void fill(List<FilledRow> rows) throws UnreadableInput, IOException {
    Map<FilledCell, FilledRow> filled = new LinkedHashMap<>();
    Map<String, Integer> lines = new HashMap<>();
    for (FilledRow row : rows) {
      try {
        FilledCell cell = cells.of(row);
        Integer first = lines.putIfAbsent(cell.place(), row.line());
        if (first != null) {
          throw new Refused(
              "reading", row.reading(), "is there twice, first in row " + first + "; keep one");
        }
        filled.put(cell, row);
      } catch (Refused refused) {
        fault(row, refused);
      }
    }
    if (faults.isEmpty()) {
      copy(filled);
    }
  }

  private void fault(FilledRow row, Refused refused) {
    faults.add(
        new Fault(
            origin,
            OptionalInt.of(row.line()),
            Optional.of(refused.column()),
            refused.found(),
            refused.getMessage()));
  }

  private void copy(Map<FilledCell, FilledRow> filled) throws UnreadableInput, IOException {
    for (FileRead file : source.files()) {
      Path from = source.workbook() ? input : input.resolve(file.name());
      files.put(file.name(), FileRead.bytes(from, heap));
    }
    if (source.workbook()) {
      workbook(filled);
    } else {
      filled
          .keySet()
          .forEach(
              cell ->
                  files.computeIfPresent(
                      cell.origin(),
                      (name, bytes) ->
                          CsvEdit.with(
                              bytes, cell.table(), cell.row(), cell.column(), cell.text())));
    }
  }

  private void workbook(Map<FilledCell, FilledRow> filled) throws IOException {
    String name = source.files().get(0).name();
    try (WorkbookEdit book = WorkbookEdit.of(files.get(name))) {
      filled.forEach(
          (cell, row) -> {
            if (!book.put(cell.table(), cell.row(), cell.column(), cell.text())) {
              String where = cell.origin() + " row " + cell.row();
              fault(
                  row,
                  new Refused(
                      "reading", row.reading(), "is a formula in " + where + "; type it there"));
            }
          });
      files.put(name, book.bytes());
    }
    if (!faults.isEmpty()) {
      files.clear();
    }
  }
}
