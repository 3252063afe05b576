package org.jawroom.report;

import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.jawroom.clearance.Limit;
import org.jawroom.placement.JobOutcome;
import org.jawroom.placement.JobReason;
import org.jawroom.placement.Recommendation;
import org.jawroom.placement.Shortfall;
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

  private JobsCsv() {}

  /** Writes all rows in the order given; leaves {@code out} open. */
  public static void write(List<JobOutcome> jobs, OutputStream out) throws IOException {
    CsvTable table = new CsvTable(out, HEADER);
    for (JobOutcome job : jobs) {
      table.row(row(job));
    }
    table.finish();
  }

  private static List<String> row(JobOutcome outcome) {
    List<String> row = new ArrayList<>(HEADER.size());
    row.add(PlainText.harmless(outcome.job().name()));
    row.add(PlainText.harmless(outcome.machine().name()));
    row.add(PlainText.harmless(outcome.vise().name()));
    row.add(outcome.verdict().code());
    row.add(CsvTable.down(outcome.margin()));
    Recommendation place = outcome.place().orElse(null);
    row.add(place == null ? "" : place.handleTo().word());
    row.add(place == null ? "" : Figures.millimetres(place.x(), Rounding.NEAREST));
    row.add(place == null ? "" : Figures.millimetres(place.y(), Rounding.NEAREST));
    row.add(place == null ? "" : PlainText.harmless(place.mount()));
    row.add(
        outcome.shortfalls().stream()
            .map(shortfall -> shortfall.reason().code())
            .collect(Collectors.joining(";")));
    row.add(outcome.shortfalls().stream().map(JobsCsv::by).collect(Collectors.joining(";")));
    row.add(CsvTable.down(outcome.toolRoom()));
    row.add(outcome.loadRoom().map(Figures::kilograms).orElse(""));
    row.add(outcome.limit().map(Limit::guard).map(PlainText::harmless).orElse(""));
    row.add(outcome.missing().stream().map(Column::path).collect(Collectors.joining(";")));
    return row;
  }

  private static String by(Shortfall shortfall) {
    return shortfall.kilograms().map(Figures::kilogramsUp).orElse(CsvTable.up(shortfall.by()));
  }
}
