package org.jawroom.report.checks;

import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import org.jawroom.checks.Reconciliation;
import org.jawroom.checks.Suspect;
import org.jawroom.checks.Suspicion;
import org.jawroom.publish.ReportKind;
import org.jawroom.report.csv.CsvReport;
import org.jawroom.report.format.Figures;
import org.jawroom.report.format.PlainText;
import org.jawroom.report.format.ReportMarks;
import org.jawroom.report.format.Rounding;

/**
 * {@code suspects.csv}: a row for each reading of each set that would explain the checks. {@code
 * written_mm} is empty for a reading that is blank or written as a range.
 */
public final class SuspectsCsv {

  /** The name of the file. */
  public static final String FILE = "suspects.csv";

  private static final List<String> HEADER =
      List.of(
          "group",
          "choice",
          "table",
          "name",
          "reading",
          "written_mm",
          "must_be_from_mm",
          "must_be_to_mm",
          "explains");

  public static final ReportKind KIND = ReportMarks.csv(HEADER);

  private SuspectsCsv() {}

  /** Writes the file; does not close {@code out}. */
  public static void write(Reconciliation reconciliation, OutputStream out) throws IOException {
    CsvReport table = new CsvReport(out, HEADER);
    for (int group = 0; group < reconciliation.suspicions().size(); group++) {
      Suspicion suspicion = reconciliation.suspicions().get(group);
      for (int choice = 0; choice < suspicion.choices().size(); choice++) {
        for (Suspect suspect : suspicion.choices().get(choice)) {
          table.row(row(group + 1, choice + 1, suspect));
        }
      }
    }
    table.finish();
  }

  private static List<String> row(int group, int choice, Suspect suspect) {
    return List.of(
        Integer.toString(group),
        Integer.toString(choice),
        suspect.reading().table(),
        PlainText.harmless(suspect.reading().name()),
        PlainText.harmless(suspect.reading().reading()),
        suspect.written().isSingle()
            ? Figures.millimetres(suspect.written().lo().orElseThrow().floor(), Rounding.NEAREST)
            : "",
        CheckFigures.low(suspect.mustBe().lo()),
        CheckFigures.high(suspect.mustBe().hi()),
        Integer.toString(suspect.explains()));
  }
}
