package org.jawroom.report;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.jawroom.advice.Advice;
import org.jawroom.app.run.Solving;
import org.jawroom.fixture.outcome.Invented;
import org.jawroom.placement.job.JobOutcome;
import org.jawroom.placement.job.JobPairing;
import org.jawroom.placement.pairing.Pairing;
import org.jawroom.report.csv.Batch;
import org.jawroom.report.csv.JobRows;
import org.jawroom.report.csv.SolvedBlock;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.matrix.MatrixWorkbook;
import org.jawroom.report.matrix.ReportOptions;
import org.jawroom.report.tally.ShopOutcomes;
import org.jawroom.report.tally.Totals;
import org.jawroom.report.xlsx.ListSheet;
import org.jawroom.report.xlsx.RunFacts;
import org.jawroom.report.xlsx.SheetLimits;
import org.jawroom.shop.Shop;

/** A workbook written and opened again. */
public final class Opened {
  private Opened() {}

  public static byte[] bytes(Shop shop, List<Advice> advice, RunFacts facts, SheetLimits limits)
      throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    MatrixWorkbook.write(
        shop,
        advice,
        Totals.of(shop, advice, JobPairing.all(shop)),
        ShopOutcomes.NONE,
        facts,
        ReportOptions.ALL,
        limits,
        Solving.layouts(shop),
        out);
    return out.toByteArray();
  }

  /** Writes all reports at once; gives the files written. */
  public static List<Path> reports(
      Path directory, Shop shop, List<Advice> advice, List<JobOutcome> jobs) throws IOException {
    try (Reports reports =
        new Reports(directory, shop, ReportOptions.ALL, PeopleUnit.MM, Solving.layouts(shop))) {
      reports.add(new SolvedBlocks(shop, advice, jobs).all());
      return reports.publish(ShopOutcomes.NONE, Invented.facts(PeopleUnit.MM));
    }
  }

  /** {@code jobs.csv} of a shop. */
  public static String jobsCsv(Shop shop) throws IOException {
    List<Advice> bare =
        shop.machines().stream()
            .flatMap(
                machine ->
                    shop.vises().stream()
                        .map(vise -> Pairing.solve(shop.settings(), machine, vise))
                        .map(Advice::bare))
            .toList();
    SolvedBlock all = new SolvedBlocks(shop, bare, JobPairing.all(shop)).all();
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (JobRows rows = new JobRows(shop.jobs().size())) {
      for (Batch batch : all.batches()) {
        rows.add(batch.jobs());
      }
      rows.writeTo(out);
    }
    return out.toString(StandardCharsets.UTF_8);
  }

  public static XSSFWorkbook open(Shop shop, List<Advice> advice, PeopleUnit unit)
      throws IOException {
    return open(shop, advice, Invented.facts(unit), SheetLimits.XLSX);
  }

  public static XSSFWorkbook open(
      Shop shop, List<Advice> advice, RunFacts facts, SheetLimits limits) throws IOException {
    return new XSSFWorkbook(new ByteArrayInputStream(bytes(shop, advice, facts, limits)));
  }

  public static void eachCell(Sheet sheet, Consumer<Cell> seen) {
    for (Row row : sheet) {
      row.forEach(seen);
    }
  }

  /** The entries of a list sheet, cells parted by bars. */
  public static List<String> rows(Sheet sheet) {
    List<String> rows = new ArrayList<>();
    for (int i = ListSheet.FIRST_ENTRY; i <= sheet.getLastRowNum(); i++) {
      rows.add(sheet.getRow(i) == null ? "" : row(sheet.getRow(i)));
    }
    return rows;
  }

  private static String row(Row row) {
    List<String> cells = new ArrayList<>();
    for (Cell cell : row) {
      cells.add(
          cell.getCellType() == CellType.NUMERIC
              ? String.valueOf(cell.getNumericCellValue())
              : cell.getStringCellValue());
    }
    return String.join("|", cells);
  }

  /** The column of a list sheet with that heading. */
  public static int column(Sheet sheet, String heading) {
    for (Cell cell : sheet.getRow(ListSheet.FIRST_ENTRY - 1)) {
      if (cell.getStringCellValue().equals(heading)) {
        return cell.getColumnIndex();
      }
    }
    throw new AssertionError("no column " + heading);
  }

  /** A cell of the list sheet's entry of that number. */
  public static Cell entry(Sheet sheet, int entry, String heading) {
    return sheet.getRow(ListSheet.FIRST_ENTRY + entry).getCell(column(sheet, heading));
  }
}
