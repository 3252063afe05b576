package org.jawroom.tables.source.csv;

import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.jawroom.tables.schema.TableSpec;
import org.jawroom.tables.source.grid.Cell;
import org.jawroom.tables.source.grid.CellBudget;
import org.jawroom.tables.source.grid.FaultList;
import org.jawroom.tables.source.grid.GatheredTables;
import org.jawroom.tables.source.grid.Grid;

/**
 * Parses one CSV file: UTF-8, or UTF-16 with byte order mark; delimiter comma, semicolon, tab or
 * bar, declared by a first line {@code sep=;} or detected from the header row; quoted cells; any
 * line ends; blank lines are skipped.
 */
public final class CsvTable {
  private static final String UNPAIRED =
      "has quotes that do not pair up, so nothing from here on was read; a cell that begins with \""
          + " must end with one, and a \" inside it is written twice";

  private static final String BETWEEN = "put a comma, semicolon, tab or | between the cells";

  private final TableSpec table;
  private final String origin;
  private final FaultList faults;

  /** False once something could not be read. */
  private boolean whole = true;

  /** True once a limit is reached and the rest is not read. */
  private boolean full;

  /** Includes the header row and rows that could not be kept. */
  private int filledRows;

  public CsvTable(TableSpec table, String origin, FaultList faults) {
    this.table = table;
    this.origin = origin;
    this.faults = faults;
  }

  /** Adds what can be read of it to {@code gathering}; the rest becomes faults. */
  public void read(byte[] bytes, GatheredTables gathering) {
    CsvText text = new CsvText(bytes);
    CsvText.Trouble trouble = text.trouble();
    if (trouble.line() > 0) {
      fault(trouble.line(), trouble.message());
      gathering.add(table, Optional.empty(), whole);
    } else {
      gathering.add(table, grid(text, gathering.room), whole);
    }
  }

  private Optional<Grid> grid(CsvText text, CellBudget room) {
    String first = text.firstLine();
    if (!CsvDelimiter.isDeclared(first)) {
      return grid(CsvDelimiter.of(text.header(), table), text.reader(), 0, room);
    }
    Optional<Character> declared = CsvDelimiter.declared(first);
    if (declared.isEmpty()) {
      fault(1, CsvDelimiter.NOT_NAMED);
      return Optional.empty();
    }
    return grid(declared.get(), text.afterFirstLine(), 1, room);
  }

  /**
   * @param before lines that {@code reader} leaves out
   */
  private Optional<Grid> grid(char delimiter, Reader reader, long before, CellBudget room) {
    CSVFormat format =
        CSVFormat.DEFAULT.builder().setDelimiter(delimiter).setIgnoreEmptyLines(false).get();
    List<Grid.Row> rows = new ArrayList<>();
    long line = before;
    try (Reader bounded = new CsvBounds(reader, delimiter);
        CSVParser parser = CSVParser.parse(bounded, format)) {
      Iterator<CSVRecord> records = parser.iterator();
      line = before + 1;
      // Without a valid header row no later row can be interpreted.
      while (!full && (whole || !rows.isEmpty()) && records.hasNext()) {
        add(records.next(), (int) line, rows, delimiter, room);
        line = before + parser.getCurrentLineNumber() + 1;
      }
    } catch (IOException | UncheckedIOException e) {
      Throwable cause = e instanceof UncheckedIOException ? e.getCause() : e;
      fault((int) line, cause instanceof CsvBounds.Beyond ? cause.getMessage() : UNPAIRED);
    }
    if (rows.isEmpty() && whole) {
      fault(0, "is empty; give it a header row, or take it away");
    }
    return rows.isEmpty()
        ? Optional.empty()
        : Optional.of(new Grid(table, origin, rows.get(0), rows.subList(1, rows.size())));
  }

  /** Adds the row unless it is blank, or its cells cannot be separated, which is a fault. */
  private void add(
      CSVRecord cells, int line, List<Grid.Row> rows, char delimiter, CellBudget room) {
    NavigableMap<Integer, Cell> filled = new TreeMap<>();
    for (int i = 0; i < cells.size(); i++) {
      Cell cell = Cell.text(cells.get(i));
      if (cell.text().length() > Grid.LONGEST_CELL) {
        fault(line, Grid.TOO_LONG_A_CELL);
        return;
      }
      if (!cell.isBlank()) {
        filled.put(i, cell);
      }
    }
    if (filled.isEmpty()) {
      return;
    }
    if (++filledRows > Grid.MOST_ROWS + 1) {
      fault(line, Grid.TOO_MANY_ROWS);
      full = true;
      return;
    }
    if (rows.isEmpty() && cells.size() == 1 && table.column(cells.get(0)).isEmpty()) {
      fault(line, "has one cell alone, no column of " + table.tableName() + "; " + BETWEEN);
      return;
    }
    if (!rows.isEmpty() && cells.size() > rows.get(0).width()) {
      String sign = delimiter == '\t' ? "tab" : String.valueOf(delimiter);
      fault(
          line,
          String.format(
              "has %d cells, but the header has %d; a cell that holds a %s must stand in quotes",
              cells.size(), rows.get(0).width(), sign));
      return;
    }
    if (!filled.values().stream().allMatch(room::take)) {
      fault(line, room.full());
      full = true;
      return;
    }
    rows.add(new Grid.Row(line, cells.size(), filled));
  }

  private void fault(int row, String message) {
    whole = false;
    faults.add(table, origin, row, "", "", message);
  }
}
