package org.jawroom.report.standing;

import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import java.util.Optional;
import org.jawroom.clearance.gap.Limit;
import org.jawroom.geometry.Interval;
import org.jawroom.placement.standing.StandingOutcome;
import org.jawroom.placement.standing.StandingOutcome.Move;
import org.jawroom.publish.ReportKind;
import org.jawroom.report.csv.CsvReport;
import org.jawroom.report.format.Figures;
import org.jawroom.report.format.PlainText;
import org.jawroom.report.format.ReportMarks;
import org.jawroom.report.format.Rounding;
import org.jawroom.shop.Standing;

/**
 * {@code standing.csv}: one row for each vise that stands on a machine, in codes and millimetres.
 */
public final class StandingCsv {

  /** The name of the file. */
  public static final String FILE = "standing.csv";

  private static final List<String> HEADER =
      List.of(
          "machine",
          "vise",
          "handle_to",
          "x_mm",
          "y_mm",
          "says",
          "margin_mm",
          "limited_by",
          "limiting_part",
          "limiting_axis",
          "limiting_situation",
          "usable_from_mm",
          "usable_to_mm",
          "reach_shortfall_mm",
          "move_x_mm",
          "move_y_mm",
          "turn_to");

  public static final ReportKind KIND = ReportMarks.csv(HEADER);

  private StandingCsv() {}

  /** Writes all rows in the order given; does not close {@code out}. */
  public static void write(List<StandingOutcome> standing, OutputStream out) throws IOException {
    CsvReport report = new CsvReport(out, HEADER);
    for (StandingOutcome outcome : standing) {
      report.row(row(outcome));
    }
    report.finish();
  }

  private static List<String> row(StandingOutcome outcome) {
    Standing standing = outcome.standing();
    Optional<Limit> limit = outcome.limit();
    Optional<Interval> usable = outcome.usable();
    Optional<Move> move = outcome.move();
    return List.of(
        PlainText.harmless(standing.machine().name()),
        PlainText.harmless(standing.vise().name()),
        standing.place().handleTo().word(),
        nearest(standing.x()),
        nearest(standing.y()),
        outcome.says().word(),
        CsvReport.down(outcome.margin()),
        limit.map(one -> PlainText.harmless(one.guard().name())).orElse(""),
        limit.map(one -> PlainText.harmless(one.part().name())).orElse(""),
        limit.map(one -> one.axis().letter()).orElse(""),
        limit.map(one -> one.situation().word()).orElse(""),
        usable.map(opening -> CsvReport.up(opening.lo())).orElse(""),
        usable.map(opening -> CsvReport.down(opening.hi())).orElse(""),
        CsvReport.up(outcome.reachShortfall()),
        move.map(by -> nearest(by.dx())).orElse(""),
        move.map(by -> nearest(by.dy())).orElse(""),
        move.map(by -> by.turnTo().word()).orElse(""));
  }

  private static String nearest(long length) {
    return Figures.millimetres(length, Rounding.NEAREST);
  }
}
