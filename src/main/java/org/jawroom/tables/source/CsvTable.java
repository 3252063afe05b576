package org.jawroom.tables.source;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.StandardCharsets;
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

/**
 * One CSV file: UTF-8, with or without byte order mark; comma, semicolon or tab, told from the
 * header; cells quoted where needed; lines ended in any way; blank lines skipped.
 */
final class CsvTable {
  private final TableSpec table;
  private final String origin;
  private final FaultList faults;

  /** False once something could not be read. */
  private boolean whole = true;

  /** True once there are so many rows that the rest is not read. */
  private boolean full;

  CsvTable(TableSpec table, String origin, FaultList faults) {
    this.table = table;
    this.origin = origin;
    this.faults = faults;
  }

  /** Adds what can be read of it to {@code gathering}; whatever cannot is a fault. */
  void read(byte[] bytes, Source.Gathering gathering) {
    Optional<Grid> grid = decoded(bytes).flatMap(this::grid);
    gathering.add(table, grid, whole);
  }

  private Optional<String> decoded(byte[] bytes) {
    // One that reports malformed bytes rather than replacing them, which is the default of
    // newDecoder.
    CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder();
    ByteBuffer in = ByteBuffer.wrap(bytes);
    CharBuffer out = CharBuffer.allocate(bytes.length);
    CoderResult result = decoder.decode(in, out, true);
    String text = out.flip().toString();
    if (result.isError()) {
      fault(1 + lineEnds(text), "is not UTF-8 from here on; save the file as CSV in UTF-8");
      return Optional.empty();
    }
    return Optional.of(text.startsWith("\ufeff") ? text.substring(1) : text);
  }

  private Optional<Grid> grid(String text) {
    char delimiter = CsvDelimiter.of(text, table);
    CSVFormat format =
        CSVFormat.DEFAULT.builder().setDelimiter(delimiter).setIgnoreEmptyLines(false).get();
    List<Grid.Row> rows = new ArrayList<>();
    long line = 0;
    try (CSVParser parser = CSVParser.parse(new StringReader(text), format)) {
      Iterator<CSVRecord> records = parser.iterator();
      line = 1;
      // Without a sound header, no row after it could be understood.
      while (!full && (whole || !rows.isEmpty()) && records.hasNext()) {
        add(records.next(), (int) line, rows, delimiter);
        line = parser.getCurrentLineNumber() + 1;
      }
    } catch (IOException | UncheckedIOException e) {
      fault(
          (int) line,
          "has quotes that do not pair up, so nothing from here on was read; a cell that begins with \""
              + " must end with one, and a \" inside it is written twice");
    }
    if (rows.isEmpty() && whole) {
      fault(0, "is empty; give it a header row, or take it away");
    }
    return rows.isEmpty()
        ? Optional.empty()
        : Optional.of(new Grid(table, origin, rows.get(0), rows.subList(1, rows.size())));
  }

  /** Adds the row unless it is blank, or its cells cannot be told apart, which is a fault. */
  private void add(CSVRecord cells, int line, List<Grid.Row> rows, char delimiter) {
    if (cells.size() > Grid.MOST_COLUMNS) {
      fault(line, "has more than 16384 cells");
      return;
    }
    NavigableMap<Integer, Cell> filled = new TreeMap<>();
    for (int i = 0; i < cells.size(); i++) {
      Cell cell = Cell.text(cells.get(i));
      if (cell.text().length() > Grid.LONGEST_CELL) {
        fault(line, "has a cell of more than 32767 characters");
        return;
      }
      if (!cell.isBlank()) {
        filled.put(i, cell);
      }
    }
    if (filled.isEmpty()) {
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
    if (rows.size() > Grid.MOST_ROWS) {
      fault(line, Grid.TOO_MANY_ROWS);
      full = true;
      return;
    }
    rows.add(new Grid.Row(line, cells.size(), filled));
  }

  private void fault(int row, String message) {
    whole = false;
    faults.add(table, origin, row, "", "", message);
  }

  private static int lineEnds(String text) {
    return (int) text.replace("\r\n", "\n").chars().filter(c -> c == '\n' || c == '\r').count();
  }
}
