package org.jawroom.report.survey;

import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jawroom.publish.ReportKind;
import org.jawroom.report.csv.CsvReport;
import org.jawroom.report.format.Figures;
import org.jawroom.report.format.PlainText;
import org.jawroom.report.format.ReportMarks;
import org.jawroom.report.format.Rounding;
import org.jawroom.report.limits.Margins;
import org.jawroom.report.rows.PairingCells.Columns;
import org.jawroom.report.survey.count.RowGroups.Group;
import org.jawroom.report.survey.count.Survey;

/**
 * The counts of a survey for programs: a row for each group, the columns asked for first. Lengths
 * in mm to 0.001, rounded down; the quantiles are those of the margins that are not blank, empty if
 * there is none.
 */
final class SurveyCsv {
  private static final List<String> FIGURES =
      List.of(
          "pairings",
          "share_percent",
          "comfortable",
          "margins",
          "least_mm",
          "q10_mm",
          "median_mm",
          "q90_mm",
          "greatest_mm");

  static final ReportKind KIND =
      ReportMarks.csv(
          FIGURES,
          row ->
              row.size() > FIGURES.size()
                  && row.subList(row.size() - FIGURES.size(), row.size()).equals(FIGURES));

  private SurveyCsv() {}

  /** Writes all groups; does not close {@code out}. */
  static void write(Survey survey, OutputStream out) throws IOException {
    List<String> header = new ArrayList<>();
    survey.asked().by().forEach(column -> header.add(PlainText.harmless(column)));
    header.addAll(FIGURES);
    CsvReport table = new CsvReport(out, header);
    for (int rank = 0; rank < survey.groups().size(); rank++) {
      table.row(row(survey.groups().group(rank), survey));
    }
    table.finish();
  }

  private static List<String> row(Group group, Survey survey) {
    List<String> row = new ArrayList<>();
    for (int i = 0; i < group.words().size(); i++) {
      String word = group.words().get(i);
      // A number begins no formula, even if it is negative.
      boolean number = Columns.isLength(survey.asked().by().get(i));
      row.add(number ? word : PlainText.harmless(word));
    }
    row.add(String.valueOf(group.pairings()));
    row.add(
        String.format(
            Locale.ROOT,
            "%.3f",
            new SurveyCell.Share(group.pairings(), survey.chosen()).percent()));
    row.add(String.valueOf(group.comfortable()));
    row.add(String.valueOf(group.margins().count()));
    row.add(quantile(group.margins(), 0, 1));
    row.add(quantile(group.margins(), 1, 10));
    row.add(quantile(group.margins(), 1, 2));
    row.add(quantile(group.margins(), 9, 10));
    row.add(quantile(group.margins(), 1, 1));
    return row;
  }

  private static String quantile(Margins margins, int part, int of) {
    return margins.count() == 0
        ? ""
        : Figures.millimetres(margins.quantile(part, of), Rounding.DOWN);
  }
}
