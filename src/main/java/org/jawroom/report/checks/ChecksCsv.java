package org.jawroom.report.checks;

import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jawroom.checks.Reconciliation;
import org.jawroom.checks.exact.ValueRange;
import org.jawroom.checks.expected.ExpectedGap;
import org.jawroom.clearance.guard.SweptGuard;
import org.jawroom.publish.ReportKind;
import org.jawroom.report.card.CheckSheet;
import org.jawroom.report.csv.CsvReport;
import org.jawroom.report.format.Figures;
import org.jawroom.report.format.PlainText;
import org.jawroom.report.format.ReportMarks;
import org.jawroom.report.format.Rounding;
import org.jawroom.shop.Check;
import org.jawroom.shop.machine.Guard;

/**
 * {@code checks.csv}: a row for each check in input order, as read, lengths in mm; then the gaps
 * that would agree and what the gap found says. The last four cells are empty for a check that
 * cannot be compared.
 */
public final class ChecksCsv {

  /** The name of the file. */
  public static final String FILE = "checks.csv";

  private static final List<String> SAID =
      List.of("expected_from_mm", "expected_to_mm", "says", "by_mm");

  private static final List<String> HEADER = header();

  /** The table of checks begins with the same columns, so that all of them count. */
  public static final ReportKind KIND = ReportMarks.csvHeader(HEADER);

  private ChecksCsv() {}

  private static List<String> header() {
    List<String> header = new ArrayList<>(CheckSheet.HEADER);
    header.addAll(SAID);
    return List.copyOf(header);
  }

  /** Writes the file; does not close {@code out}. */
  public static void write(Reconciliation reconciliation, OutputStream out) throws IOException {
    CsvReport table = new CsvReport(out, HEADER);
    for (Reconciliation.Result result : reconciliation.checks()) {
      List<String> cells = new ArrayList<>(asRead(result.check()));
      cells.addAll(said(result.expected()));
      table.row(cells);
    }
    table.finish();
  }

  private static List<String> asRead(Check check) {
    return List.of(
        PlainText.harmless(check.machine().name()),
        PlainText.harmless(check.vise().name()),
        check.handleTo().word(),
        length(check.fromLeft()),
        length(check.fromFront()),
        PlainText.harmless(check.part()),
        PlainText.harmless(check.guard().map(Guard::name).orElse(SweptGuard.TABLE)),
        opening(check.opening()),
        check.whileCutting() ? "cutting" : "loading",
        check.axis().map(axis -> axis.name().toLowerCase(Locale.ROOT)).orElse(""),
        length(check.found()),
        length(check.provenance().tolerance()),
        check.provenance().source(),
        PlainText.harmless(check.provenance().measured()),
        "mm");
  }

  private static String opening(Check.Opening opening) {
    return opening.stated().isPresent()
        ? length(opening.stated().getAsLong())
        : opening.open() ? "open" : "closed";
  }

  private static List<String> said(Optional<ExpectedGap> expected) {
    if (expected.isEmpty()) {
      return List.of("", "", "", "");
    }
    ExpectedGap gap = expected.get();
    ValueRange range = gap.range();
    return List.of(
        CheckFigures.low(range.lo()),
        CheckFigures.high(range.hi()),
        gap.says().code(),
        CheckFigures.high(gap.outside()));
  }

  private static String length(long length) {
    return Figures.millimetres(length, Rounding.NEAREST);
  }
}
