package org.jawroom.report.xlsx;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.util.CellAddress;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.jawroom.advice.Advice;
import org.jawroom.advice.Advisor;
import org.jawroom.report.Opened;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.format.TextLines;
import org.jawroom.shop.Shop;
import org.jawroom.tables.ShopReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RemarkTest {

  /**
   * Of 30 and 20 characters of 10 points 61 of 9 points fit on a line, 20 words of 3 with spaces.
   */
  @ParameterizedTest
  @CsvSource({"1,15.78", "20,15.78", "21,28.56", "40,28.56", "41,41.34"})
  void write_words_makesTheRowAsTallAsTheirLines(int words, float points) throws IOException {
    try (SXSSFWorkbook book = new SXSSFWorkbook()) {
      Row row = book.createSheet().createRow(1);
      String text = String.join(" ", Collections.nCopies(words, "ab"));
      Remark.write(row, 1, List.of(10, 30, 20), text, styles(book), 15);
      assertEquals(points, row.getHeightInPoints(), 0.05);
      assertEquals(List.of("B2:C2"), merged(row));
      assertTrue(row.getCell(1).getCellStyle().getWrapText());
    }
  }

  @Test
  void write_inAWideTable_takesWhatIsReadWithoutScrolling() throws IOException {
    try (SXSSFWorkbook book = new SXSSFWorkbook()) {
      Row row = book.createSheet().createRow(0);
      Remark.write(row, 2, Collections.nCopies(30, 22), "a", styles(book), 15);
      assertEquals(List.of("C1:G1"), merged(row));
    }
  }

  @Test
  void write_inOneColumn_mergesNone() throws IOException {
    try (SXSSFWorkbook book = new SXSSFWorkbook()) {
      Row row = book.createSheet().createRow(0);
      Remark.write(row, 0, List.of(40), "a", styles(book), 20);
      assertEquals(List.of(), merged(row));
      assertEquals(20, row.getHeightInPoints(), 0);
    }
  }

  @Test
  void sheets_ofASmallShop_haveNoLineWiderThanTheirTables() throws Exception {
    Path folder = Path.of(RemarkTest.class.getResource("/org/jawroom/golden/jobs").toURI());
    Shop shop = ShopReader.read(folder, Map.of()).shop().orElseThrow();
    List<Advice> advice =
        shop.machines().stream()
            .flatMap(
                machine ->
                    shop.vises().stream()
                        .map(vise -> Advisor.advise(shop.settings(), machine, vise)))
            .toList();
    List<String> wider = new ArrayList<>();
    int[] wrapped = {0};
    try (XSSFWorkbook book = Opened.open(shop, advice, PeopleUnit.INCH)) {
      for (Sheet sheet : book) {
        int end = columns(sheet);
        Opened.eachCell(
            sheet,
            cell -> {
              if (cell.getCellType() == CellType.STRING) {
                wrapped[0] += cell.getCellStyle().getWrapText() ? 1 : 0;
                if (isWider((XSSFCell) cell, end)) {
                  wider.add(sheet.getSheetName() + "!" + new CellAddress(cell));
                }
              }
            });
      }
    }
    assertEquals(List.of(), wider);
    assertTrue(wrapped[0] > 100, wrapped[0] + " cells wrap");
  }

  private static int columns(Sheet sheet) {
    int most = 0;
    for (Row row : sheet) {
      most = Math.max(most, row.getLastCellNum());
    }
    return most;
  }

  private static boolean isWider(XSSFCell cell, int end) {
    int width =
        IntStream.range(cell.getColumnIndex(), end)
            .map(column -> cell.getSheet().getColumnWidth(column) / 256)
            .sum();
    int points = cell.getCellStyle().getFont().getFontHeightInPoints();
    return !cell.getCellStyle().getWrapText()
        && cell.getStringCellValue().length() > TextLines.perLine(width, points);
  }

  private static Styles styles(SXSSFWorkbook book) {
    return new Styles(book.getXSSFWorkbook(), PeopleUnit.MM);
  }

  private static List<String> merged(Row row) {
    return row.getSheet().getMergedRegions().stream().map(one -> one.formatAsString()).toList();
  }
}
