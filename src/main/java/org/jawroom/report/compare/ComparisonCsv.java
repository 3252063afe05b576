package org.jawroom.report.compare;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.jawroom.report.format.Figures;
import org.jawroom.report.format.PlainText;
import org.jawroom.report.format.Rounding;
import org.jawroom.report.rows.PairingRow;

/**
 * The changes, for programs: one row for each changed pairing, in the order of listing, and one for
 * each that only one of the runs has. RFC 4180 with CRLF. The margins are {@code margin_mm} of
 * {@code pairings.csv}; the limiting pair is that of the new run.
 */
public final class ComparisonCsv implements Comparison.Reader {
  private static final String[] HEADER = {
    "machine",
    "vise",
    "change",
    "old_verdict",
    "new_verdict",
    "old_margin_mm",
    "new_margin_mm",
    "limited_by"
  };

  private final CSVPrinter printer;

  private ComparisonCsv(CSVPrinter printer) {
    this.printer = printer;
  }

  public static void write(Comparison comparison, Appendable out) throws IOException {
    CSVPrinter printer = new CSVPrinter(out, CSVFormat.RFC4180);
    printer.printRecord((Object[]) HEADER);
    comparison.read(new ComparisonCsv(printer));
  }

  @Override
  public void pair(Change change, ComparedPair pair) throws IOException {
    printer.printRecord(
        row(
            pair.now(),
            change,
            verdict(pair.old()),
            verdict(pair.now()),
            margin(pair.old()),
            margin(pair.now()),
            limitedBy(pair.now())));
  }

  @Override
  public void only(Change side, PairingRow one) throws IOException {
    printer.printRecord(
        side == Change.ONLY_OLD
            ? row(one, side, verdict(one), "", margin(one), "", "")
            : row(one, side, "", verdict(one), "", margin(one), limitedBy(one)));
  }

  private static List<String> row(PairingRow names, Change change, String... cells) {
    List<String> row = new ArrayList<>();
    row.add(PlainText.harmless(names.machine()));
    row.add(PlainText.harmless(names.vise()));
    row.add(change.code());
    row.addAll(List.of(cells));
    return row;
  }

  private static String verdict(PairingRow row) {
    return row.verdict().code();
  }

  private static String margin(PairingRow row) {
    OptionalLong margin = row.margin();
    return margin.isPresent() ? Figures.millimetres(margin.getAsLong(), Rounding.DOWN) : "";
  }

  private static String limitedBy(PairingRow row) {
    return row.limiting().map(limiting -> PlainText.harmless(limiting.guard())).orElse("");
  }
}
