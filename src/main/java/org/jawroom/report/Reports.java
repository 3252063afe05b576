package org.jawroom.report;

import java.io.Closeable;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntFunction;
import org.jawroom.advice.Advice;
import org.jawroom.placement.pairing.Layout;
import org.jawroom.publish.AtomicFiles;
import org.jawroom.publish.Destination;
import org.jawroom.publish.ReportKind;
import org.jawroom.report.csv.Batch;
import org.jawroom.report.csv.JobRows;
import org.jawroom.report.csv.JobsCsv;
import org.jawroom.report.csv.PairingsCsv;
import org.jawroom.report.csv.RemediesCsv;
import org.jawroom.report.csv.ShopOrder;
import org.jawroom.report.csv.SolvedBlock;
import org.jawroom.report.csv.UnknownsCsv;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.format.ReportMarks;
import org.jawroom.report.matrix.MatrixWorkbook;
import org.jawroom.report.matrix.ReportOptions;
import org.jawroom.report.overview.OverviewWorkbook;
import org.jawroom.report.set.SetsCsv;
import org.jawroom.report.standing.StandingCsv;
import org.jawroom.report.tally.ShopOutcomes;
import org.jawroom.report.tally.Totals;
import org.jawroom.report.xlsx.RunFacts;
import org.jawroom.report.xlsx.SheetLimits;
import org.jawroom.shop.Shop;

/**
 * Writes all reports of a shop; the entry point of the package. Pairings are added one block at a
 * time and written as soon as they are next in shop order.
 *
 * <p>Writes {@link PairingsCsv}, {@link RemediesCsv}, {@link UnknownsCsv}, {@link JobsCsv}, {@link
 * StandingCsv} and {@link SetsCsv} if the shop has jobs, standing vises and sets, and {@link
 * MatrixWorkbook} or, above {@link ReportOptions#DETAILED} pairings, {@link OverviewWorkbook}. The
 * files appear under their names only when all are complete; on any failure the previous files stay
 * unchanged.
 */
public final class Reports implements Closeable {

  private final Destination all;
  private final Shop shop;
  private final ReportOptions wanted;
  private final IntFunction<Layout> layouts;
  private final SheetLimits limits;
  private final AtomicFiles files;
  private final OutputStream pairings;
  private final Optional<RemediesCsv> remedies;
  private final Optional<UnknownsCsv> unknowns;
  private final ShopOrder order;
  private final Totals totals;
  private final JobRows jobs;
  private final List<Advice> kept = new ArrayList<>();
  private final Optional<OverviewWorkbook> overview;

  /** Returns the files that these reports will write into {@code directory}. */
  public static Destination destination(Path directory, Shop shop, ReportOptions wanted) {
    Map<String, ReportKind> files = new LinkedHashMap<>(all(directory).files());
    if (!wanted.remedies()) {
      files.remove(RemediesCsv.FILE);
      files.remove(UnknownsCsv.FILE);
    }
    if (shop.jobs().isEmpty()) {
      files.remove(JobsCsv.FILE);
    }
    if (shop.standing().isEmpty()) {
      files.remove(StandingCsv.FILE);
    }
    if (shop.sets().isEmpty()) {
      files.remove(SetsCsv.FILE);
    }
    if (!wanted.workbook()) {
      files.remove(MatrixWorkbook.FILE);
    }
    return new Destination(directory, files);
  }

  private static Destination all(Path directory) {
    Map<String, ReportKind> files = new LinkedHashMap<>();
    files.put(PairingsCsv.FILE, PairingsCsv.KIND);
    files.put(RemediesCsv.FILE, RemediesCsv.KIND);
    files.put(UnknownsCsv.FILE, UnknownsCsv.KIND);
    files.put(JobsCsv.FILE, JobsCsv.KIND);
    files.put(StandingCsv.FILE, StandingCsv.KIND);
    files.put(SetsCsv.FILE, SetsCsv.KIND);
    files.put(MatrixWorkbook.FILE, ReportMarks.workbook(MatrixWorkbook.TITLE));
    return new Destination(directory, files);
  }

  /**
   * Opens the reports of {@code shop} in {@code directory}, which is created if missing.
   *
   * @param layouts where things stand at the recommended place of the pairing with that index,
   *     machines then vises; asked only for those that are drawn
   * @throws IOException if a file could not be written
   */
  public Reports(
      Path directory, Shop shop, ReportOptions wanted, PeopleUnit unit, IntFunction<Layout> layouts)
      throws IOException {
    this(directory, shop, wanted, unit, layouts, ReportOptions.DETAILED, SheetLimits.XLSX);
  }

  public Reports(
      Path directory,
      Shop shop,
      ReportOptions wanted,
      PeopleUnit unit,
      IntFunction<Layout> layouts,
      long detailed,
      SheetLimits limits)
      throws IOException {
    this.all = all(directory);
    this.shop = shop;
    this.wanted = wanted;
    this.layouts = layouts;
    this.limits = limits;
    long count = (long) shop.machines().size() * shop.vises().size();
    this.totals = new Totals(shop, wanted.workbook() && count <= detailed);
    this.order = new ShopOrder(shop);
    this.jobs = new JobRows(shop.jobs().size());
    this.files = new AtomicFiles(all);
    boolean begun = false;
    try {
      pairings = files.add(PairingsCsv.FILE);
      if (wanted.header()) {
        pairings.write(PairingsCsv.header());
      }
      boolean withRemedies = wanted.remedies();
      remedies =
          withRemedies
              ? Optional.of(new RemediesCsv(files.add(RemediesCsv.FILE), wanted.header()))
              : Optional.empty();
      unknowns =
          withRemedies
              ? Optional.of(new UnknownsCsv(files.add(UnknownsCsv.FILE), wanted.header()))
              : Optional.empty();
      overview =
          wanted.workbook() && count > detailed
              ? Optional.of(new OverviewWorkbook(shop, unit, wanted.remedies(), limits))
              : Optional.empty();
      begun = true;
    } finally {
      if (!begun) {
        files.close();
      }
    }
  }

  /**
   * Adds the next block, in the order of {@link ShopOrder}. Its batches must keep the outcomes if
   * remedies are wanted, or a workbook that lists each pairing in full.
   */
  public void add(SolvedBlock solved) throws IOException {
    totals.add(solved.totals());
    for (Batch batch : order.next(solved)) {
      write(batch);
    }
  }

  private void write(Batch batch) throws IOException {
    pairings.write(batch.pairings());
    jobs.add(batch.jobs());
    if (remedies.isPresent()) {
      for (Advice pairing : batch.advice()) {
        remedies.get().add(pairing);
        unknowns.orElseThrow().add(pairing);
      }
    }
    if (overview.isPresent()) {
      overview.get().add(batch.shown(), totals);
    } else if (wanted.workbook()) {
      kept.addAll(batch.advice());
    }
  }

  /** Returns the totals over the pairings added so far. */
  public Totals totals() {
    return totals;
  }

  /**
   * Publishes all files together.
   *
   * @param beside what was worked out beside the pairings
   * @return the files written
   * @throws IOException if a file could not be written
   */
  public List<Path> publish(ShopOutcomes beside, RunFacts facts) throws IOException {
    if (remedies.isPresent()) {
      remedies.get().finish();
      unknowns.orElseThrow().finish();
    }
    if (!shop.jobs().isEmpty()) {
      jobs.writeTo(files.add(JobsCsv.FILE));
    }
    if (!shop.standing().isEmpty()) {
      StandingCsv.write(beside.standing(), files.add(StandingCsv.FILE));
    }
    if (!shop.sets().isEmpty()) {
      SetsCsv.write(beside.sets(), files.add(SetsCsv.FILE));
    }
    if (overview.isPresent()) {
      overview.get().writeTo(files.add(MatrixWorkbook.FILE), totals, beside, facts);
    } else if (wanted.workbook()) {
      MatrixWorkbook.write(
          shop,
          kept,
          totals,
          beside,
          facts,
          wanted,
          limits,
          layouts,
          files.add(MatrixWorkbook.FILE));
    }
    return files.publish();
  }

  /**
   * Returns reports of an earlier run that are still in the folder because this run writes no such
   * report. They do not belong to the files just written.
   *
   * @param written the files of this run
   */
  public List<Path> older(List<Path> written) throws IOException {
    List<Path> older = new ArrayList<>();
    for (String name : all.files().keySet()) {
      Path report = all.folder().resolve(name);
      if (!written.contains(report) && all.holds(name)) {
        older.add(report);
      }
    }
    return older;
  }

  /** Removes the part files that were not published. */
  @Override
  public void close() throws IOException {
    try {
      if (overview.isPresent()) {
        overview.get().close();
      }
    } finally {
      try {
        jobs.close();
      } finally {
        files.close();
      }
    }
  }
}
