package org.jawroom.report;

import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import org.jawroom.advice.Advice;
import org.jawroom.advice.Remedy;
import org.jawroom.clearance.Limit;
import org.jawroom.placement.Outcome;

/** {@code remedies.csv}: one row for each single change that makes a pairing fit. */
public final class RemediesCsv {

  /** The name of the file. */
  public static final String FILE = "remedies.csv";

  private static final List<String> HEADER =
      List.of("machine", "vise", "remedy", "amount_mm", "margin_then_mm", "limited_by_then");

  private RemediesCsv() {}

  /** Writes all rows, pairings and their remedies in the order given; leaves {@code out} open. */
  public static void write(List<Advice> advice, OutputStream out) throws IOException {
    CsvTable table = new CsvTable(out, HEADER);
    for (Advice pairing : advice) {
      for (Remedy remedy : pairing.remedies()) {
        table.row(row(pairing.outcome(), remedy));
      }
    }
    table.finish();
  }

  private static List<String> row(Outcome outcome, Remedy remedy) {
    return List.of(
        PlainText.harmless(outcome.machine().name()),
        PlainText.harmless(outcome.vise().name()),
        remedy.name(),
        CsvTable.up(remedy.amount()),
        remedy.then().limit().map(limit -> CsvTable.down(limit.margin())).orElse(""),
        remedy.then().limit().map(Limit::guard).map(PlainText::harmless).orElse(""));
  }
}
