package org.jawroom.report.survey;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Locale;
import org.jawroom.publish.AtomicFiles;
import org.jawroom.publish.Destination;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.format.ReportMarks;
import org.jawroom.report.survey.count.Survey;

/** Writes a survey into a file; the entry point of the package besides {@link SurveyText}. */
public final class SurveyReports {
  public static final String WORKBOOK = ".xlsx";
  public static final String CSV = ".csv";

  private SurveyReports() {}

  /** The file {@code file}, of the kind that its ending asks for. */
  public static Destination destination(Path file) {
    return Destination.file(
        file, isCsv(file) ? SurveyCsv.KIND : ReportMarks.workbook(SurveyWorkbook.TITLE));
  }

  /**
   * Writes {@code file}, a workbook or a CSV by its ending.
   *
   * @throws IOException if it could not be written; an older one then stays
   */
  public static void write(Path file, Survey survey, PeopleUnit unit) throws IOException {
    AtomicFiles.publish(
        destination(file),
        out -> {
          if (isCsv(file)) {
            SurveyCsv.write(survey, out);
          } else {
            SurveyWorkbook.write(survey, unit, out);
          }
        });
  }

  private static boolean isCsv(Path file) {
    return file.toString().toLowerCase(Locale.ROOT).endsWith(CSV);
  }
}
