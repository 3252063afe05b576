package org.jawroom.cli.option;

import java.io.PrintWriter;
import java.util.Optional;
import org.jawroom.app.choice.MachineRange;
import org.jawroom.report.matrix.ReportOptions;
import org.jawroom.shop.Shop;
import picocli.CommandLine.Option;

/** The options that select what a matrix run computes and writes. */
public final class MatrixOptions {
  @Option(
      names = "--machines",
      order = 4,
      paramLabel = "A…B",
      description =
          "only the machines from A to B, in the order of the tables, or one alone; the CSV"
              + " files of a part that does not begin with the first machine have no header, so"
              + " that the parts can be joined (jobs.csv goes job by job, and cannot)")
  private String machines;

  @Option(names = "--no-workbook", order = 5, description = "write CSV files only")
  private boolean noWorkbook;

  @Option(
      names = "--remedies",
      order = 6,
      negatable = true,
      description =
          "compute what would make pairings fit, what to measure, and how many vises stand"
              + " on one table,"
              + " or not (default: up to 20000 pairings in the whole shop)")
  private Boolean remedies;

  /** Empty, with one line on {@code err}, if there are no such machines. */
  public Optional<MachineRange> part(Shop shop, PrintWriter err) {
    return machines == null
        ? Optional.of(MachineRange.whole(shop))
        : MachineRange.of(shop, machines, err);
  }

  /**
   * What to report of a part of a shop.
   *
   * @param whole the shop that {@code part} belongs to: the facts of a pairing must not depend on
   *     how the shop is split
   */
  public ReportOptions wanted(MachineRange part, Shop whole, int drawings) {
    long pairings = (long) whole.machines().size() * whole.vises().size();
    boolean advised = remedies == null ? pairings <= ReportOptions.DETAILED : remedies;
    return new ReportOptions(part.isFirst(), advised, !noWorkbook, drawings);
  }
}
