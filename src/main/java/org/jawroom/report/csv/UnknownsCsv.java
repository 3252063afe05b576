package org.jawroom.report.csv;

import java.io.IOException;
import java.io.OutputStream;
import java.util.Arrays;
import java.util.List;
import org.jawroom.advice.Advice;
import org.jawroom.advice.blank.BlankGaps;
import org.jawroom.advice.blank.BlankLimit;
import org.jawroom.advice.blank.Relation;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.publish.ReportKind;
import org.jawroom.report.format.PlainText;
import org.jawroom.report.format.ReportMarks;
import org.jawroom.report.wording.OpenWords;

/**
 * {@code unknowns.csv}: one row for each blank with a limit in an unknown pairing, and for each
 * guard whose gap is blank.
 */
public final class UnknownsCsv {

  /** The name of the file. */
  public static final String FILE = "unknowns.csv";

  private static final List<String> HEADER =
      List.of("machine", "vise", "column", "relation", "limit_mm", "sure_mm");

  public static final ReportKind KIND = ReportMarks.csv(HEADER, UnknownsCsv::isRow);

  private final CsvReport table;

  /**
   * Starts the file; does not close {@code out}.
   *
   * @param header whether to write the header row
   */
  public UnknownsCsv(OutputStream out, boolean header) throws IOException {
    table = header ? new CsvReport(out, HEADER) : new CsvReport(out);
  }

  /** Writes header and all rows, pairings in the order given; does not close {@code out}. */
  public static void write(List<Advice> advice, OutputStream out) throws IOException {
    UnknownsCsv file = new UnknownsCsv(out, true);
    for (Advice pairing : advice) {
      file.add(pairing);
    }
    file.finish();
  }

  /** Writes the rows of the next pairing. */
  public void add(Advice pairing) throws IOException {
    for (BlankLimit blank : pairing.limits()) {
      table.row(row(pairing.outcome(), blank));
    }
  }

  public void finish() throws IOException {
    table.finish();
  }

  /** Later versions have more columns. */
  private static boolean isRow(List<String> cells) {
    return cells.get(2).matches("[a-z_]+\\.[a-z_]+( \\(.*\\))?")
        && Arrays.stream(Relation.values()).anyMatch(one -> one.code().equals(cells.get(3)));
  }

  private static List<String> row(Outcome outcome, BlankLimit blank) {
    return List.of(
        PlainText.harmless(outcome.machine().name()),
        PlainText.harmless(outcome.vise().name()),
        OpenWords.path(blank.reading()),
        blank.relation().code(),
        blank.relation() == Relation.AT_MOST
            ? CsvReport.down(blank.limit())
            : CsvReport.up(blank.limit()),
        BlankGaps.isGap(blank.reading().column())
            ? CsvReport.up(blank.sure())
            : CsvReport.down(blank.sure()));
  }
}
