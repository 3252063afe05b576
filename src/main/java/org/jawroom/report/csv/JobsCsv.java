package org.jawroom.report.csv;

import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jawroom.placement.job.JobOutcome;
import org.jawroom.placement.job.JobReason;
import org.jawroom.placement.job.Shortfall;
import org.jawroom.placement.search.Recommendation;
import org.jawroom.publish.ReportKind;
import org.jawroom.report.format.Figures;
import org.jawroom.report.format.PlainText;
import org.jawroom.report.format.ReportMarks;
import org.jawroom.report.format.Rounding;
import org.jawroom.shop.Column;

/**
 * {@code jobs.csv}: one row for each job on each pairing, in codes and millimetres.
 *
 * <p>{@code margin_mm}, {@code handle_to} to {@code mount} and {@code limited_by} (the guard) speak
 * of the place: of a job that is not held, of the one that comes nearest, where there is one to
 * look for. {@code shortfall_reason} has the code of everything that fails ({@link JobReason}), the
 * first first, {@code ;} between; {@code short_by} the amount of each in the same order, up to
 * 0.001: kg for {@code load}, else mm, nothing where a reason has none or a blank leaves it open.
 * Of an {@code unknown} only {@code missing} is told.
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
          "missing");

  public static final ReportKind KIND = ReportMarks.csv(HEADER);

  /** SheetColumns from handle_to to mount. */
  private static final int PLACE_COLUMNS = 4;

  private JobsCsv() {}

  /** Writes all rows in the order given; leaves {@code out} open. */
  public static void write(List<JobOutcome> jobs, OutputStream out) throws IOException {
    CsvRows rows = new CsvRows();
    HEADER.forEach(rows::text);
    rows.end();
    for (JobOutcome job : jobs) {
      row(rows, job);
    }
    out.write(rows.bytes());
  }

  private static void row(CsvRows row, JobOutcome outcome) {
    row.text(PlainText.harmless(outcome.job().name()));
    row.text(PlainText.harmless(outcome.machine().name()));
    row.text(PlainText.harmless(outcome.vise().name()));
    row.text(outcome.verdict().code());
    row.length(outcome.margin(), Rounding.DOWN);
    Recommendation place = outcome.place().orElse(null);
    if (place == null) {
      row.empty(PLACE_COLUMNS);
    } else {
      row.text(place.handleTo().word());
      row.length(place.x(), Rounding.NEAREST);
      row.length(place.y(), Rounding.NEAREST);
      row.text(PlainText.harmless(place.mount()));
    }
    row.text(joined(outcome.shortfalls(), shortfall -> shortfall.reason().code()));
    row.text(joined(outcome.shortfalls(), JobsCsv::by));
    row.length(outcome.toolRoom(), Rounding.DOWN);
    row.text(outcome.loadRoom().map(Figures::kilograms).orElse(""));
    row.text(outcome.limit().map(limit -> PlainText.harmless(limit.guard().name())).orElse(""));
    row.text(joined(outcome.missing(), Column::path));
    row.end();
  }

  private static <T> String joined(List<T> all, Function<T, String> text) {
    return all.isEmpty() ? "" : all.stream().map(text).collect(Collectors.joining(";"));
  }

  private static String by(Shortfall shortfall) {
    return shortfall.kilograms().map(Figures::kilogramsUp).orElse(CsvReport.up(shortfall.by()));
  }
}
