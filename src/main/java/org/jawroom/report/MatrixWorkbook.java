package org.jawroom.report;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Date;
import java.util.List;
import java.util.Optional;
import org.apache.poi.ooxml.POIXMLProperties;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.jawroom.advice.Advice;
import org.jawroom.placement.JobOutcome;
import org.jawroom.placement.Outcome;
import org.jawroom.shop.Shop;

/** {@code matrix.xlsx}: the workbook for people. */
public final class MatrixWorkbook {

  /** The name of the file. */
  public static final String FILE = "matrix.xlsx";

  /** When every workbook says it was made, so that equal reports are equal files. */
  private static final Instant EVERY_BOOK = Instant.parse("2000-01-01T00:00:00Z");

  private MatrixWorkbook() {}

  /**
   * Writes the workbook; leaves {@code out} open.
   *
   * @param advice one for each pairing, machines then vises in the order of {@code shop}
   * @param jobs one for each job on each pairing: jobs, then machines, then vises
   * @param drawings how many pairings to draw at most; 0 for no such sheet
   * @throws IllegalArgumentException if there are more or fewer
   */
  public static void write(
      Shop shop,
      List<Advice> advice,
      List<JobOutcome> jobs,
      RunFacts facts,
      int drawings,
      OutputStream out)
      throws IOException {
    write(shop, advice, jobs, facts, drawings, SheetLimits.XLSX, out);
  }

  static void write(
      Shop shop,
      List<Advice> advice,
      List<JobOutcome> jobs,
      RunFacts facts,
      int drawings,
      SheetLimits limits,
      OutputStream out)
      throws IOException {
    if (advice.size() != shop.machines().size() * shop.vises().size()) {
      throw new IllegalArgumentException(advice.size() + " pairings for " + shop.machines().size()
          + " machines and " + shop.vises().size() + " vises");
    }
    if (jobs.size() != shop.jobs().size() * advice.size()) {
      throw new IllegalArgumentException(jobs.size() + " outcomes for " + shop.jobs().size()
          + " jobs on " + advice.size() + " pairings");
    }
    Path rough = Files.createTempFile("matrix", ".xlsx");
    try {
      try (SXSSFWorkbook book = new SXSSFWorkbook(new XSSFWorkbook());
          OutputStream first = Files.newOutputStream(rough)) {
        fill(book, shop, advice, jobs, facts, drawings, limits);
        book.write(first);
      }
      StableZip.copy(rough, out);
    } catch (RuntimeException wrapped) {
      // Rows go to disk while a sheet is filled, and the library wraps what goes wrong there.
      if (wrapped.getCause() instanceof IOException cause) {
        throw cause;
      }
      throw wrapped;
    } finally {
      Files.deleteIfExists(rough);
    }
  }

  private static void fill(
      SXSSFWorkbook book,
      Shop shop,
      List<Advice> advice,
      List<JobOutcome> jobs,
      RunFacts facts,
      int drawings,
      SheetLimits limits)
      throws IOException {
    Styles styles = new Styles(book.getXSSFWorkbook(), facts.unit());
    describe(book.getXSSFWorkbook().getProperties(), "Which vise goes on which machine");
    List<Outcome> outcomes = advice.stream().map(Advice::outcome).toList();
    DrawnPairings drawn = new DrawnPairings(outcomes, drawings);
    MatrixSheet.add(book, styles, shop, outcomes, drawn, limits);
    if (!shop.jobs().isEmpty()) {
      JobsSheet.add(book, styles, shop, jobs, limits);
    }
    PairingsSheet.add(book, styles, advice, limits);
    NoPlaceSheet.add(book, styles, outcomes, limits);
    RemediesSheet.add(book, styles, shop, advice, limits);
    ToMeasureSheet.add(book, styles, shop, advice, limits);
    TallySheet.addByMachine(book, styles, shop, advice);
    TallySheet.addByVise(book, styles, shop, advice);
    if (drawings > 0) {
      DrawingsSheet.add(book, styles, shop.settings(), outcomes, shop.vises().size(), drawn);
    }
    InputsSheet.add(book, styles, facts, limits);
    CautionsSheet.add(book, styles);
  }

  /** Gives a workbook its title, and nothing that tells when it was made. */
  static void describe(POIXMLProperties properties, String title) {
    properties.getCoreProperties().setTitle(title);
    properties.getCoreProperties().setCreator("jawroom");
    properties.getCoreProperties().setCreated(Optional.of(Date.from(EVERY_BOOK)));
    properties.getCoreProperties().setModified(Optional.of(Date.from(EVERY_BOOK)));
  }
}
