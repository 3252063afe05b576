package org.jawroom.tables.source.csv;

import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.jawroom.tables.cell.CellText;
import org.jawroom.tables.source.grid.Fault;

/**
 * The rows of a filled {@code tape.csv}, as a spreadsheet may have saved it; other columns than the
 * four are ignored.
 *
 * @param blank how many rows have no value
 */
public record FilledRows(List<FilledRow> rows, int blank, List<Fault> faults) {
  private static final List<String> COLUMNS = List.of("table", "name", "reading", "value");
  private static final String NO_COLUMNS =
      "has no columns table, name, reading and value; fill in tape.csv as written";
  private static final List<Character> DELIMITERS = List.of(',', ';', '\t', '|');

  /**
   * Reads a file.
   *
   * @param origin for people: the name of the file
   */
  public static FilledRows read(byte[] bytes, String origin) {
    CsvText text = new CsvText(bytes);
    if (text.trouble().line() > 0) {
      return refused(origin, text.trouble().line(), text.trouble().message());
    }
    boolean declared = CsvDelimiter.isDeclared(text.firstLine());
    Optional<Character> delimiter =
        declared
            ? CsvDelimiter.declared(text.firstLine())
            : DELIMITERS.stream().filter(one -> hasColumns(text.header(), one)).findFirst();
    if (delimiter.isEmpty()) {
      return refused(origin, 1, declared ? CsvDelimiter.NOT_NAMED : NO_COLUMNS);
    }
    try {
      return declared
          ? rows(text.afterFirstLine(), 1, delimiter.get(), origin)
          : rows(text.reader(), 0, delimiter.get(), origin);
    } catch (IOException | UncheckedIOException | IllegalStateException unpaired) {
      return refused(origin, 1, "has quotes that do not pair up; save it as CSV once more");
    }
  }

  private static FilledRows refused(String origin, int line, String message) {
    return new FilledRows(List.of(), 0, List.of(fault(origin, line, message)));
  }

  private static Fault fault(String origin, int line, String message) {
    return new Fault(origin, OptionalInt.of(line), Optional.empty(), "", message);
  }

  private static boolean hasColumns(String header, char delimiter) {
    List<String> cells =
        Stream.of(header.split(Pattern.quote(String.valueOf(delimiter))))
            .map(FilledRows::heading)
            .toList();
    return cells.containsAll(COLUMNS);
  }

  private static String heading(String cell) {
    return CellText.trimmed(cell.replace("\"", "")).toLowerCase(Locale.ROOT);
  }

  /**
   * @param before lines that {@code reader} leaves out
   */
  private static FilledRows rows(Reader reader, int before, char delimiter, String origin)
      throws IOException {
    List<FilledRow> rows = new ArrayList<>();
    List<Fault> faults = new ArrayList<>();
    int blank = 0;
    CSVFormat format =
        CSVFormat.DEFAULT.builder().setDelimiter(delimiter).setIgnoreEmptyLines(false).get();
    try (CSVParser parser = CSVParser.parse(reader, format)) {
      List<String> header = List.of();
      int line = before + 1;
      for (CSVRecord record : parser) {
        if (record.stream().anyMatch(cell -> !cell.isBlank())) {
          if (header.isEmpty()) {
            header = record.stream().map(FilledRows::heading).toList();
            if (!header.containsAll(COLUMNS)) {
              return refused(origin, line, NO_COLUMNS);
            }
          } else if (record.size() > header.size()) {
            String more = "has more cells than the header; a cell that holds a %s stands in quotes";
            faults.add(fault(origin, line, more.formatted(delimiter)));
          } else if (cell(record, header, "value").isEmpty()) {
            blank++;
          } else {
            rows.add(
                new FilledRow(
                    line,
                    cell(record, header, "table"),
                    cell(record, header, "name"),
                    cell(record, header, "reading"),
                    cell(record, header, "value")));
          }
        }
        line = before + (int) parser.getCurrentLineNumber() + 1;
      }
    }
    return new FilledRows(List.copyOf(rows), blank, List.copyOf(faults));
  }

  private static String cell(CSVRecord record, List<String> header, String column) {
    int place = header.indexOf(column);
    return place < record.size() ? CellText.trimmed(record.get(place)) : "";
  }
}
