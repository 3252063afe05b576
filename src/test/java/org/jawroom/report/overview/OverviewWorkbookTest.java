package org.jawroom.report.overview;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.jawroom.advice.Advice;
import org.jawroom.app.run.Solving;
import org.jawroom.fixture.outcome.Invented;
import org.jawroom.placement.job.JobPairing;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.report.Opened;
import org.jawroom.report.Reports;
import org.jawroom.report.SampleShop;
import org.jawroom.report.SolvedBlocks;
import org.jawroom.report.csv.SolvedBlock;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.format.Rounding;
import org.jawroom.report.matrix.MatrixSheet;
import org.jawroom.report.matrix.ReportOptions;
import org.jawroom.report.tally.ShopOutcomes;
import org.jawroom.report.tally.Tally;
import org.jawroom.report.tally.Totals;
import org.jawroom.report.wording.Finding;
import org.jawroom.report.xlsx.ListSheet;
import org.jawroom.report.xlsx.SheetLimits;
import org.jawroom.shop.Shop;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The workbook of a shop that is too large, the limit being lowered for the purpose. */
class OverviewWorkbookTest {
  private static final SheetLimits ROOMY = SheetLimits.XLSX;

  private final SampleShop sample = new SampleShop();
  private final Shop shop = sample.shop;

  @TempDir private Path folder;

  @Test
  void matrix_ofALargeShop_hasEveryPairingOnce() throws IOException {
    try (XSSFWorkbook book = book(ROOMY, ReportOptions.ALL)) {
      Sheet matrix = book.getSheet("Matrix");
      int across = shop.vises().size();
      for (int i = 0; i < sample.advice.size(); i++) {
        Outcome outcome = sample.advice.get(i).outcome();
        Row row = matrix.getRow(MatrixSheet.FIRST_MARGIN + i / across);
        assertTrue(row.getCell(0).getStringCellValue().startsWith(outcome.machine().name()));
        Cell cell = row.getCell(1 + i % across);
        if (outcome.margin().isPresent()) {
          long margin = outcome.margin().getAsLong();
          assertEquals(
              PeopleUnit.MM.number(margin, Rounding.DOWN), cell.getNumericCellValue(), "" + i);
        } else {
          assertEquals(Finding.of(outcome).sign(), cell.getStringCellValue(), "" + i);
        }
      }
      assertEquals(MatrixSheet.FIRST_MARGIN + shop.machines().size() - 1, matrix.getLastRowNum());
    }
  }

  @Test
  void matrix_bestOfEachMachine_isFramed() throws IOException {
    try (XSSFWorkbook book = book(ROOMY, ReportOptions.ALL)) {
      Totals totals = Totals.of(shop, sample.advice, List.of());
      for (int machine = 0; machine < shop.machines().size(); machine++) {
        Row row = book.getSheet("Matrix").getRow(MatrixSheet.FIRST_MARGIN + machine);
        List<Integer> framed =
            IntStream.range(0, shop.vises().size())
                .filter(
                    vise ->
                        row.getCell(1 + vise).getCellStyle().getBorderTop()
                            == org.apache.poi.ss.usermodel.BorderStyle.THICK)
                .boxed()
                .toList();
        Tally tally = totals.machine(machine);
        List<Integer> best =
            tally.best().isPresent()
                ? List.of((int) tally.bestIndex() % shop.vises().size())
                : List.of();
        assertEquals(best, framed);
      }
    }
  }

  @Test
  void overview_saysInWordsWhatIsThereAndWhatIsNot() throws IOException {
    try (XSSFWorkbook book = book(ROOMY, new ReportOptions(true, false, true, 0))) {
      assertEquals("Overview", book.getSheetName(0));
      assertEquals(
          List.of("Overview", "Matrix", "Pairings", "By machine", "By vise", "Cautions", "Inputs"),
          IntStream.range(0, book.getNumberOfSheets()).mapToObj(book::getSheetName).toList());
      String words = words(book.getSheet("Overview"));
      assertTrue(words.contains("112 pairings: "), words);
      assertTrue(words.contains("pairings.csv does, a row for each."), words);
      assertTrue(words.contains("were not worked out"), words);
      assertFalse(Files.exists(folder.resolve("remedies.csv")));
      assertFalse(Files.exists(folder.resolve("unknowns.csv")));
    }
  }

  @Test
  void overview_countOfTheMatrix_isTheNumberOfMarginsNotBelowZero() throws IOException {
    try (XSSFWorkbook book = book(ROOMY, ReportOptions.ALL)) {
      Cell count = null;
      for (Row row : book.getSheet("Overview")) {
        Cell cell = row.getCell(0);
        count = cell != null && cell.getCellType() == CellType.FORMULA ? cell : count;
      }
      long clear =
          sample.advice.stream()
              .map(Advice::outcome)
              .filter(outcome -> outcome.margin().orElse(-1) >= 0)
              .count();
      assertEquals(clear, (long) count.getNumericCellValue());
      double again =
          book.getCreationHelper().createFormulaEvaluator().evaluate(count).getNumberValue();
      assertEquals(clear, (long) again);
    }
  }

  @Test
  void pairings_ofALargeShop_areTheBestOfEachMachineAndEachVise() throws IOException {
    try (XSSFWorkbook book = book(ROOMY, ReportOptions.ALL)) {
      Sheet sheet = book.getSheet("Pairings");
      List<String> expected =
          Totals.of(shop, sample.advice, List.of()).chosen().stream()
              .map(Advice::outcome)
              .map(outcome -> outcome.machine().name() + "|" + outcome.vise().name())
              .toList();
      List<String> rows = new ArrayList<>();
      for (int i = ListSheet.FIRST_ENTRY; i <= sheet.getLastRowNum(); i++) {
        Row row = sheet.getRow(i);
        rows.add(row.getCell(0).getStringCellValue() + "|" + row.getCell(1).getStringCellValue());
      }
      assertEquals(expected, rows);
      assertTrue(words(sheet).contains("ONLY THE BEST OF EACH MACHINE AND OF EACH VISE"));
    }
  }

  /** Three rows for machines, four columns for vises; fewer cells than that. */
  @Test
  void matrix_beyondASheet_hasTheFirstAndSaysSo() throws IOException {
    try (XSSFWorkbook book =
        book(new SheetLimits(MatrixSheet.FIRST_MARGIN + 3, 5, 10), ReportOptions.ALL)) {
      Sheet matrix = book.getSheet("Matrix");
      assertEquals(MatrixSheet.FIRST_MARGIN + 2, matrix.getLastRowNum());
      assertEquals(5, matrix.getRow(MatrixSheet.FIRST_MARGIN).getLastCellNum());
      String title = matrix.getRow(0).getCell(0).getStringCellValue();
      int machines = shop.machines().size();
      int vises = shop.vises().size();
      assertEquals(
          "Which vise goes on which machine; ONLY THE FIRST 3 OF "
              + machines
              + " MACHINES, pairings.csv HAS ALL; ONLY THE FIRST 4 OF "
              + vises
              + " VISES, pairings.csv HAS ALL",
          title);
      assertEquals(113, Files.readAllLines(folder.resolve("pairings.csv")).size());
    }
    try (XSSFWorkbook book = book(new SheetLimits(100, 5, 10, 8), ReportOptions.ALL)) {
      assertEquals(MatrixSheet.FIRST_MARGIN + 1, book.getSheet("Matrix").getLastRowNum());
    }
  }

  private XSSFWorkbook book(SheetLimits limits, ReportOptions wanted) throws IOException {
    try (Reports reports =
        new Reports(folder, shop, wanted, PeopleUnit.MM, Solving.layouts(shop), 100, limits)) {
      for (SolvedBlock block :
          new SolvedBlocks(shop, sample.advice, JobPairing.all(shop)).split(3, 5)) {
        reports.add(block);
      }
      reports.publish(ShopOutcomes.NONE, Invented.facts(PeopleUnit.MM));
    }
    return new XSSFWorkbook(Files.newInputStream(folder.resolve("matrix.xlsx")));
  }

  private static String words(Sheet sheet) {
    StringBuilder words = new StringBuilder();
    Opened.eachCell(
        sheet,
        cell ->
            words.append(cell.getCellType() == CellType.STRING ? cell.getStringCellValue() : cell));
    return words.toString();
  }
}
