package org.jawroom.report.tape;

import java.io.IOException;
import java.io.OutputStream;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalLong;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.jawroom.advice.ToTape;
import org.jawroom.advice.tape.Decides;
import org.jawroom.advice.tape.Deciding;
import org.jawroom.geometry.Length;
import org.jawroom.publish.ReportKind;
import org.jawroom.report.csv.CsvReport;
import org.jawroom.report.format.PlainText;
import org.jawroom.report.format.ReportMarks;
import org.jawroom.shop.value.Dimension;

/** {@code tape.csv}: a row for each reading to tape, in the order of {@link ToTape#of}. */
public final class TapeCsv {

  /** The headings; {@code value} is filled in by hand. */
  public static final List<String> HEADER =
      List.of(
          "table",
          "name",
          "reading",
          "from_mm",
          "to_mm",
          "decides_mm",
          "relation",
          "pairings",
          "which",
          "read_within_mm",
          "value");

  private static final ReportKind ANY = ReportMarks.csv(HEADER);

  /** One in which no value is filled in: readings are never replaced. */
  public static final ReportKind KIND = file -> ANY.includes(file) && !isFilled(file);

  private TapeCsv() {}

  private static boolean isFilled(Path file) throws IOException {
    try (Reader text = Files.newBufferedReader(file, StandardCharsets.UTF_8);
        CSVParser rows = CSVParser.parse(text, CSVFormat.RFC4180)) {
      return rows.stream()
          .skip(1)
          .anyMatch(row -> row.size() < HEADER.size() || !row.get(HEADER.size() - 1).isBlank());
    } catch (IOException | UncheckedIOException saved) {
      // Saved by another program, so somebody worked on it.
      return true;
    }
  }

  /** Writes header and rows; does not close {@code out}. */
  public static void write(List<ToTape> readings, OutputStream out) throws IOException {
    CsvReport table = new CsvReport(out, HEADER);
    for (ToTape one : readings) {
      table.row(row(one));
    }
    table.finish();
  }

  private static List<String> row(ToTape one) {
    Dimension bounds = one.bounds();
    return List.of(
        one.reading().table(),
        PlainText.harmless(one.reading().name()),
        PlainText.harmless(one.reading().reading()),
        bounds.isBlank() || !Length.isBounded(bounds.lo()) ? "" : CsvReport.down(bounds.lo()),
        bounds.isBlank() || !Length.isBounded(bounds.hi()) ? "" : CsvReport.up(bounds.hi()),
        limits(one),
        one.decided().stream()
            .map(is -> is.deciding().how().code())
            .distinct()
            .collect(Collectors.joining(";")),
        String.valueOf(one.decided().size()),
        PlainText.harmless(String.join(";", ToTapeWords.partners(one, one.decided()))),
        CsvReport.down(one.within()),
        "");
  }

  /** In the order of {@code which}; empty if there is none. */
  private static String limits(ToTape one) {
    List<String> limits = one.decided().stream().map(is -> limit(is.deciding())).toList();
    if (limits.stream().allMatch(String::isEmpty)) {
      return "";
    }
    // A list that begins with a minus is a formula to a spreadsheet, a single number is not.
    return limits.size() == 1 ? limits.get(0) : PlainText.harmless(String.join(";", limits));
  }

  private static String limit(Deciding deciding) {
    OptionalLong limit = deciding.limit();
    return deciding.how() == Decides.UP_TO ? CsvReport.down(limit) : CsvReport.up(limit);
  }
}
