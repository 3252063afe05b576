package org.jawroom.report.matrix;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.jawroom.advice.Advice;
import org.jawroom.advice.Advisor;
import org.jawroom.app.run.Solving;
import org.jawroom.fixture.outcome.Invented;
import org.jawroom.placement.job.JobOutcome;
import org.jawroom.placement.job.JobPairing;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.pairing.Pairing;
import org.jawroom.report.Opened;
import org.jawroom.report.Reports;
import org.jawroom.report.SolvedBlocks;
import org.jawroom.report.Summary;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.tally.ShopOutcomes;
import org.jawroom.report.tally.Totals;
import org.jawroom.report.wording.JobWords;
import org.jawroom.report.xlsx.SheetLimits;
import org.jawroom.shop.Shop;
import org.jawroom.tables.ShopReader;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is written of the golden shop with jobs, whose outcomes are worked by hand. */
class JobsReportTest {
  private Shop shop;
  private List<Outcome> outcomes;
  private List<JobOutcome> jobs;

  @BeforeEach
  void readAndSolve() throws Exception {
    Path folder = Path.of(JobsReportTest.class.getResource("/org/jawroom/golden/jobs").toURI());
    shop = ShopReader.read(folder, Map.of()).shop().orElseThrow();
    outcomes =
        shop.machines().stream()
            .flatMap(
                machine ->
                    shop.vises().stream()
                        .map(vise -> Pairing.solve(shop.settings(), machine, vise)))
            .toList();
    jobs = JobPairing.all(shop);
  }

  @Test
  void csv_header_isAsProgramsReadIt() throws IOException {
    assertEquals(
        "job,machine,vise,verdict,margin_mm,handle_to,x_mm,y_mm,mount,shortfall_reason,short_by,tool_room_mm,"
            + "load_room_kg,limited_by,missing,unchecked",
        csv().lines().findFirst().orElseThrow());
  }

  @Test
  void csv_rows_jobsThenMachinesThenVises() throws IOException {
    List<String> lines = csv().lines().toList();

    assertEquals(1 + 11 * 3 * 2, lines.size());
    assertTrue(
        lines.get(2).startsWith("three wide,roomier,long screw,held,0.000,front,"), lines.get(2));
    assertTrue(lines.get(3).startsWith("three wide,short travel,plain,not held,"), lines.get(3));
    assertTrue(lines.get(7).startsWith("just under,roomier,plain,held,"), lines.get(7));
  }

  @Test
  void sheet_ofEachJob_saysHowManyHoldItAndTheBestOrTheNearest() throws IOException {
    try (XSSFWorkbook book = Opened.open(shop, advice(), PeopleUnit.INCH)) {
      Sheet sheet = book.getSheet(JobsSheet.NAME);

      assertEquals("roomier", cell(sheet, JobsSheet.FIRST_JOB - 1, 1));
      assertEquals("three wide", row(sheet, 0, 0, 0));
      assertEquals("4 × 3 × 2, tool 8, 4.54 kg", row(sheet, 0, 1, 0));
      assertEquals("● 2 of 2 vises", row(sheet, 0, 0, 1));
      assertEquals("best: plain (0.37)", row(sheet, 0, 1, 1));
      assertEquals("× not held", row(sheet, 0, 0, 2));
      assertEquals(
          "nearest: plain: the spindle does not reach the whole part where it is clear: short by 1.75",
          row(sheet, 0, 1, 2));
      assertEquals("? unknown", row(sheet, 0, 0, 3));
      assertEquals("unknown: 2 of 2", row(sheet, 0, 1, 3));
      assertEquals("● 1 of 2 vises", row(sheet, 1, 0, 1));
      assertEquals("nearest: plain: 0.15 too wide for the jaws", row(sheet, 4, 1, 1));
      assertEquals("nearest: plain: 2.27 kg too heavy for the table", row(sheet, 6, 1, 1));
      assertEquals("● 2 of 2 vises", row(sheet, 7, 0, 1));
      assertEquals("○ 2 of 2 vises", row(sheet, 10, 0, 1));
      assertEquals(
          "best: plain (0.37)\n! tool height not checked: tool_length is blank",
          row(sheet, 10, 1, 1));
      assertEquals("not run here", row(sheet, 9, 0, 1));
      assertEquals("", row(sheet, 9, 1, 1));
    }
  }

  @Test
  void sheet_tooManyForIt_cutAndSaid() throws IOException {
    SheetLimits limits = new SheetLimits(JobsSheet.FIRST_JOB + 5, 3, 100);
    try (XSSFWorkbook book = Opened.open(shop, advice(), Invented.facts(PeopleUnit.MM), limits)) {
      Sheet sheet = book.getSheet(JobsSheet.NAME);

      assertEquals(
          "Which job is held on which machine; ONLY THE FIRST 2 OF 11 JOBS FIT HERE, jobs.csv HAS ALL"
              + "; ONLY THE FIRST 2 OF 3 MACHINES FIT HERE, jobs.csv HAS ALL",
          cell(sheet, 0, 0));
      assertEquals(JobsSheet.FIRST_JOB + 3, sheet.getLastRowNum());
    }
  }

  @Test
  void reports_withJobs_haveTheirFile(@TempDir Path directory) throws IOException {
    List<Path> written = Opened.reports(directory, shop, advice(), jobs);

    assertTrue(written.contains(directory.resolve("jobs.csv")));
    assertEquals(csv(), Files.readString(directory.resolve("jobs.csv")));
  }

  /** The limit of what is listed in full is lowered to no pairing at all. */
  @Test
  void sheet_ofALargeShop_countsAlone(@TempDir Path directory) throws IOException {
    try (Reports reports =
        new Reports(
            directory,
            shop,
            ReportOptions.ALL,
            PeopleUnit.INCH,
            Solving.layouts(shop),
            0,
            SheetLimits.XLSX)) {
      reports.add(new SolvedBlocks(shop, advice(), jobs).all());
      reports.publish(ShopOutcomes.NONE, Invented.facts(PeopleUnit.INCH));
    }

    assertEquals(csv(), Files.readString(directory.resolve("jobs.csv")));
    try (XSSFWorkbook book =
        new XSSFWorkbook(Files.newInputStream(directory.resolve("matrix.xlsx")))) {
      Sheet sheet = book.getSheet(JobsSheet.NAME);
      assertEquals(
          "Of so many pairings the vises are only counted: each stands in jobs.csv.",
          cell(sheet, 2, 0));
      assertEquals("● 2 of 2 vises", row(sheet, 0, 0, 1));
      assertEquals("", row(sheet, 0, 1, 1));
      assertEquals("× not held", row(sheet, 0, 0, 2));
      assertEquals("", row(sheet, 0, 1, 2));
      assertEquals("? unknown", row(sheet, 0, 0, 3));
      assertEquals("unknown: 2 of 2", row(sheet, 0, 1, 3));
      assertEquals("○ 2 of 2 vises", row(sheet, 10, 0, 1));
      assertEquals("not run here", row(sheet, 9, 0, 1));
    }
  }

  @Test
  void reports_withoutJobs_haveNeitherFileNorSheet(@TempDir Path directory) throws IOException {
    Shop idle = new Shop(shop.settings(), shop.machines(), shop.vises(), List.of());

    Opened.reports(directory, idle, advice(), List.of());

    assertFalse(Files.exists(directory.resolve("jobs.csv")));
    try (XSSFWorkbook book =
        new XSSFWorkbook(Files.newInputStream(directory.resolve("matrix.xlsx")))) {
      assertEquals(null, book.getSheet(JobsSheet.NAME));
    }
  }

  /**
   * Tall and heavy are unknown where rear_gap is blank, and held nowhere else. What was not weighed
   * is taken as steel; only the job without a tool length leaves something unchecked.
   */
  @Test
  void summary_jobs_countedByTheBestSaidOfThem() {
    List<String> lines =
        Summary.lines(Totals.of(shop, advice(), jobs), ShopOutcomes.NONE, PeopleUnit.MM, List.of());

    int at = lines.indexOf("11 jobs:");
    assertEquals(
        List.of(
            "      3  held by some vise on some machine",
            "      1  held, but tool's height or load not checked",
            "      2  unknown: not measured, and held by none that is",
            "      5  not held anywhere"),
        lines.subList(at + 1, at + 5));
  }

  @Test
  void nearest_ofSeveral_failsLatestAndByTheLeast() {
    List<JobOutcome> justUnder = jobs.subList(6, 10);
    // Long screw on roomier is hit; plain and long screw on short travel are out of reach, and so
    // later.
    assertEquals("short travel", JobWords.nearest(justUnder).orElseThrow().machine().name());
    assertEquals("plain", JobWords.nearest(justUnder).orElseThrow().vise().name());
  }

  private List<Advice> advice() {
    return outcomes.stream()
        .map(outcome -> Advisor.advise(shop.settings(), outcome.machine(), outcome.vise()))
        .toList();
  }

  private String csv() throws IOException {
    return Opened.jobsCsv(shop);
  }

  private static String row(Sheet sheet, int job, int lower, int column) {
    return cell(sheet, JobsSheet.FIRST_JOB + 2 * job + lower, column);
  }

  private static String cell(Sheet sheet, int row, int column) {
    return sheet.getRow(row).getCell(column).getStringCellValue();
  }
}
