package org.jawroom.report.csv;

import java.util.List;
import org.jawroom.placement.job.JobOutcome;
import org.jawroom.placement.job.JobReason;
import org.jawroom.placement.job.Shortfall;
import org.jawroom.placement.job.Unchecked;
import org.jawroom.placement.search.Recommendation;
import org.jawroom.publish.ReportKind;
import org.jawroom.report.format.Figures;
import org.jawroom.report.format.PlainText;
import org.jawroom.report.format.ReportMarks;
import org.jawroom.report.format.Rounding;
import org.jawroom.shop.value.Column;

/**
 * {@code jobs.csv}: one row for each job on each pairing, in codes and millimetres.
 *
 * <p>{@code margin_mm}, {@code handle_to} to {@code mount} and {@code limited_by} (the guard)
 * describe the place; for a job that is not held, the place nearest to holding it, if there is one.
 * {@code shortfall_reason} lists the codes of every reason that fails ({@link JobReason}), in
 * order, separated by {@code ;}; {@code short_by} lists the amount of each in the same order,
 * rounded up to 0.001: kg for {@code load}, else mm, empty if a reason has no amount or depends on
 * a blank. For {@code unknown} only {@code missing} is filled. {@code unchecked} lists the
 * requirements that a blank leaves unchecked, separated by {@code ;}.
 */
public final class JobsCsv {

  /** The name of the file. */
  public static final String FILE = "jobs.csv";

  private static final List<String> HEADER =
      List.of(
          "job",
          "machine",
          "vise",
          "verdict",
          "margin_mm",
          "handle_to",
          "x_mm",
          "y_mm",
          "mount",
          "shortfall_reason",
          "short_by",
          "tool_room_mm",
          "load_room_kg",
          "limited_by",
          "missing",
          "unchecked");

  public static final ReportKind KIND = ReportMarks.csv(HEADER);

  /** Columns from handle_to to mount. */
  private static final int PLACE_COLUMNS = 4;

  private JobsCsv() {}

  /** The header row. */
  public static byte[] header() {
    CsvRows rows = new CsvRows(1);
    HEADER.forEach(rows::text);
    rows.end();
    return rows.bytes();
  }

  /**
   * The rows of one job.
   *
   * @param ofPairings for each pairing the outcome of each job, in order
   * @param job index of the job
   */
  static byte[] rows(List<List<JobOutcome>> ofPairings, int job) {
    CsvRows rows = new CsvRows(ofPairings.size());
    for (List<JobOutcome> ofPairing : ofPairings) {
      row(rows, ofPairing.get(job));
    }
    return rows.bytes();
  }

  private static void row(CsvRows row, JobOutcome outcome) {
    row.text(PlainText.harmless(outcome.job().name()));
    row.text(PlainText.harmless(outcome.machine().name()));
    row.text(PlainText.harmless(outcome.vise().name()));
    row.code(outcome.verdict().code());
    row.length(outcome.margin(), Rounding.DOWN);
    Recommendation place = outcome.place().orElse(null);
    if (place == null) {
      row.empty(PLACE_COLUMNS);
    } else {
      row.code(place.handleTo().word());
      row.length(place.x(), Rounding.NEAREST);
      row.length(place.y(), Rounding.NEAREST);
      row.text(PlainText.harmless(place.mount()));
    }
    row.text(CsvRows.joined(outcome.shortfalls(), shortfall -> shortfall.reason().code()));
    row.text(CsvRows.joined(outcome.shortfalls(), JobsCsv::by));
    row.length(outcome.toolRoom(), Rounding.DOWN);
    row.kilograms(outcome.loadRoom());
    row.text(outcome.limit().map(limit -> PlainText.harmless(limit.guard().name())).orElse(""));
    row.text(CsvRows.joined(outcome.missing(), Column::path));
    row.text(CsvRows.joined(outcome.unchecked(), Unchecked::code));
    row.end();
  }

  private static String by(Shortfall shortfall) {
    return shortfall.kilograms().map(Figures::kilogramsUp).orElse(CsvReport.up(shortfall.by()));
  }
}
