package org.jawroom.report.csv;

import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.OptionalLong;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.jawroom.report.format.Figures;
import org.jawroom.report.format.Rounding;

/**
 * A CSV file in the common format of all reports for programs: UTF-8 without byte order mark, RFC
 * 4180 with CRLF, millimetres. A cell that does not apply is empty.
 */
public final class CsvReport {
  private final CSVPrinter printer;

  /** Starts a file without header row; does not close {@code out}. */
  public CsvReport(OutputStream out) throws IOException {
    Writer writer = new OutputStreamWriter(out, StandardCharsets.UTF_8);
    printer = new CSVPrinter(writer, CSVFormat.RFC4180);
  }

  /** Writes the header row; does not close {@code out}. */
  public CsvReport(OutputStream out, List<String> header) throws IOException {
    this(out);
    printer.printRecord(header);
  }

  public void row(List<String> cells) throws IOException {
    printer.printRecord(cells);
  }

  public void finish() throws IOException {
    printer.flush();
  }

  public static String down(long length) {
    return Figures.millimetres(length, Rounding.DOWN);
  }

  public static String down(OptionalLong length) {
    return length.isPresent() ? down(length.getAsLong()) : "";
  }

  public static String up(long length) {
    return Figures.millimetres(length, Rounding.UP);
  }

  public static String up(OptionalLong length) {
    return length.isPresent() ? up(length.getAsLong()) : "";
  }
}
