package org.jawroom.app.run;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import org.jawroom.app.input.PeopleUnits;
import org.jawroom.app.output.PrintedData;
import org.jawroom.app.output.Progress;
import org.jawroom.report.Reports;
import org.jawroom.report.Summary;
import org.jawroom.report.csv.PairingsStream;
import org.jawroom.report.csv.SolvedBlock;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.matrix.ReportOptions;
import org.jawroom.report.tally.ShopOutcomes;
import org.jawroom.report.xlsx.RunFacts;
import org.jawroom.shop.Shop;
import org.jawroom.tables.Reading;

/**
 * Solves the pairings of a shop and writes them as they are solved.
 *
 * @param shop the shop to solve: all of the reading's shop or a part
 */
public record MatrixRun(
    Reading reading,
    Shop shop,
    ReportOptions wanted,
    int threads,
    PrintWriter out,
    PrintWriter err) {

  /** Prints {@code pairings.csv} to standard output and messages to standard error. */
  public void print() throws IOException {
    Meanwhile<ShopOutcomes> beside = beside();
    PairingsStream stream = new PairingsStream(new PrintedData(out), shop, wanted.header());
    solve(stream::add);
    Summary.lines(stream.totals(), beside.get(), unit(), List.of()).forEach(err::println);
    noRemedies(err);
  }

  /** Writes all selected files into {@code directory}. */
  public void write(Path directory) throws IOException {
    Meanwhile<ShopOutcomes> beside = beside();
    try (Reports reports = new Reports(directory, shop, wanted, unit(), Solving.layouts(shop))) {
      solve(reports::add);
      RunFacts facts = Facts.of(reading, shop, reports.totals().shortTools());
      List<Path> written = reports.publish(beside.get(), facts);
      Summary.lines(reports.totals(), beside.get(), unit(), written).forEach(out::println);
      noRemedies(out);
      reports
          .older(written)
          .forEach(
              report -> out.println(report + " is of an earlier run: do not read it with these."));
      if (!facts.warnings().isEmpty()) {
        out.println(
            facts.warnings().size()
                + (facts.warnings().size() == 1 ? " warning" : " warnings")
                + " on the inputs: see the sheet Inputs, or jawroom check.");
      }
    }
  }

  private Meanwhile<ShopOutcomes> beside() {
    return Meanwhile.start(threads, () -> Solving.beside(shop));
  }

  private void solve(Pipeline.Taker<SolvedBlock> taker) throws IOException {
    Solving.blocks(shop, wanted.remedies(), threads, Progress.on(err), taker);
  }

  private PeopleUnit unit() {
    return PeopleUnits.ofShop(reading);
  }

  private void noRemedies(PrintWriter to) {
    if (!wanted.remedies()) {
      to.println(
          "Remedies, limits of blanks and how many stand on one table were not worked out: see"
              + " --remedies.");
    }
  }
}
