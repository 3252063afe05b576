package org.jawroom.report.checks;

import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import org.jawroom.checks.Narrowed;
import org.jawroom.checks.Reconciliation;
import org.jawroom.publish.ReportKind;
import org.jawroom.report.csv.CsvReport;
import org.jawroom.report.format.PlainText;
import org.jawroom.report.format.ReportMarks;

/** {@code narrowed.csv}: a row for each open reading of which checks leave less than its range. */
public final class NarrowedCsv {

  /** The name of the file. */
  public static final String FILE = "narrowed.csv";

  private static final List<String> HEADER =
      List.of("table", "name", "reading", "was_from_mm", "was_to_mm", "now_from_mm", "now_to_mm");

  public static final ReportKind KIND = ReportMarks.csv(HEADER);

  private NarrowedCsv() {}

  /** Writes the file; does not close {@code out}. */
  public static void write(Reconciliation reconciliation, OutputStream out) throws IOException {
    CsvReport table = new CsvReport(out, HEADER);
    for (Narrowed narrowed : reconciliation.narrowed()) {
      table.row(
          List.of(
              narrowed.reading().table(),
              PlainText.harmless(narrowed.reading().name()),
              PlainText.harmless(narrowed.reading().reading()),
              CheckFigures.low(narrowed.was().lo()),
              CheckFigures.high(narrowed.was().hi()),
              CheckFigures.low(narrowed.now().lo()),
              CheckFigures.high(narrowed.now().hi())));
    }
    table.finish();
  }
}
