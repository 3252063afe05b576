package org.jawroom.report.csv;

import java.io.IOException;
import java.io.OutputStream;
import java.util.Arrays;
import java.util.List;
import org.jawroom.advice.Advice;
import org.jawroom.advice.remedy.Remedy;
import org.jawroom.advice.remedy.RemedyKind;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.publish.ReportKind;
import org.jawroom.report.format.PlainText;
import org.jawroom.report.format.ReportMarks;

/** {@code remedies.csv}: one row for each single change that makes a pairing fit. */
public final class RemediesCsv {

  /** The name of the file. */
  public static final String FILE = "remedies.csv";

  private static final List<String> HEADER =
      List.of(
          "machine", "vise", "remedy", "amount_mm", "then", "margin_then_mm", "limited_by_then");

  /** That of version 0.2.0 and before, which did not say what the pairing becomes. */
  private static final List<String> FIRST_HEADER =
      List.of("machine", "vise", "remedy", "amount_mm", "margin_then_mm", "limited_by_then");

  public static final ReportKind KIND = ReportMarks.csv(HEADER, RemediesCsv::isRow);

  private final CsvReport table;

  /**
   * Starts the file; does not close {@code out}.
   *
   * @param header whether to write the header row
   */
  public RemediesCsv(OutputStream out, boolean header) throws IOException {
    table = header ? new CsvReport(out, HEADER) : new CsvReport(out);
  }

  /** Writes header and all rows, pairings in the order given; does not close {@code out}. */
  public static void write(List<Advice> advice, OutputStream out) throws IOException {
    RemediesCsv file = new RemediesCsv(out, true);
    for (Advice pairing : advice) {
      file.add(pairing);
    }
    file.finish();
  }

  /** Writes the rows of the next pairing. */
  public void add(Advice pairing) throws IOException {
    for (Remedy remedy : pairing.remedies()) {
      table.row(row(pairing.outcome(), remedy));
    }
  }

  public void finish() throws IOException {
    table.finish();
  }

  /** Whether the first row of a file is one of remedies, or the header of an earlier version. */
  private static boolean isRow(List<String> cells) {
    if (cells.equals(FIRST_HEADER)) {
      return true;
    }
    return (cells.size() == HEADER.size() || cells.size() == FIRST_HEADER.size())
        && Arrays.stream(RemedyKind.values()).anyMatch(kind -> cells.get(2).startsWith(kind.code()))
        && cells.get(3).matches("[0-9.]*");
  }

  private static List<String> row(Outcome outcome, Remedy remedy) {
    return List.of(
        PlainText.harmless(outcome.machine().name()),
        PlainText.harmless(outcome.vise().name()),
        remedy.name(),
        CsvReport.up(remedy.amount()),
        remedy.then().code(),
        remedy.place().limit().map(limit -> CsvReport.down(limit.margin())).orElse(""),
        remedy.place().limit().map(limit -> PlainText.harmless(limit.guard().name())).orElse(""));
  }
}
