package org.jawroom.report.csv;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.jawroom.clearance.gap.Limit;
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
   * For each job its rows.
   *
   * @param ofPairings for each pairing the outcome of each job, in order
   */
  static List<byte[]> rows(List<List<JobOutcome>> ofPairings) {
    int jobs = ofPairings.isEmpty() ? 0 : ofPairings.get(0).size();
    List<byte[]> rows = new ArrayList<>(jobs);
    List<String> pairings = new ArrayList<>(ofPairings.size());
    for (List<JobOutcome> ofPairing : jobs == 0 ? List.<List<JobOutcome>>of() : ofPairings) {
      pairings.add(pairing(ofPairing.get(0)));
    }
    for (int job = 0; job < jobs; job++) {
      String name = PlainText.harmless(ofPairings.get(0).get(job).job().name());
      CsvRows all = new CsvRows(ofPairings.size());
      for (int i = 0; i < ofPairings.size(); i++) {
        all.text(name);
        all.code(pairings.get(i));
        row(all, ofPairings.get(i).get(job));
      }
      rows.add(all.bytes());
    }
    return rows;
  }

  /** The cells of machine and vise. */
  private static String pairing(JobOutcome outcome) {
    CsvRows names = new CsvRows(1);
    names.text(PlainText.harmless(outcome.machine().name()));
    names.text(PlainText.harmless(outcome.vise().name()));
    return new String(names.bytes(), StandardCharsets.UTF_8);
  }

  private static void row(CsvRows row, JobOutcome outcome) {
    row.code(outcome.verdict().code());
    Recommendation place = outcome.place().orElse(null);
    Limit limit = place == null ? null : place.limit().orElse(null);
    if (place == null) {
      row.empty(1 + PLACE_COLUMNS);
    } else {
      row.length(place.margin(), Rounding.DOWN);
      row.code(place.handleTo().word());
      row.length(place.x(), Rounding.NEAREST);
      row.length(place.y(), Rounding.NEAREST);
      row.text(PlainText.harmless(place.mount()));
    }
    row.codes(outcome.shortfalls(), shortfall -> shortfall.reason().code());
    row.codes(outcome.shortfalls(), JobsCsv::by);
    row.length(outcome.toolRoom(), Rounding.DOWN);
    row.kilograms(outcome.loadRoom());
    row.text(limit == null ? "" : PlainText.harmless(limit.guard().name()));
    row.codes(outcome.missing(), Column::path);
    row.codes(outcome.unchecked(), Unchecked::code);
    row.end();
  }

  private static String by(Shortfall shortfall) {
    return shortfall.kilograms().map(Figures::kilogramsUp).orElse(CsvReport.up(shortfall.by()));
  }
}
