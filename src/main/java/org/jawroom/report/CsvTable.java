package org.jawroom.report;

import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.OptionalLong;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/**
 * A CSV file as all reports for programs are: UTF-8 without a byte order mark, RFC 4180 with CRLF,
 * millimetres. A cell that does not apply is empty.
 */
final class CsvTable {
  private final CSVPrinter printer;

  /** Without a header; leaves {@code out} open. */
  CsvTable(OutputStream out) throws IOException {
    Writer writer = new OutputStreamWriter(out, StandardCharsets.UTF_8);
    printer = new CSVPrinter(writer, CSVFormat.RFC4180);
  }

  /** Writes the header; leaves {@code out} open. */
  CsvTable(OutputStream out, List<String> header) throws IOException {
    this(out);
    printer.printRecord(header);
  }

  void row(List<String> cells) throws IOException {
    printer.printRecord(cells);
  }

  void finish() throws IOException {
    printer.flush();
  }

  static String down(long length) {
    return Figures.millimetres(length, Rounding.DOWN);
  }

  static String down(OptionalLong length) {
    return length.isPresent() ? down(length.getAsLong()) : "";
  }

  static String up(long length) {
    return Figures.millimetres(length, Rounding.UP);
  }

  static String up(OptionalLong length) {
    return length.isPresent() ? up(length.getAsLong()) : "";
  }
}
