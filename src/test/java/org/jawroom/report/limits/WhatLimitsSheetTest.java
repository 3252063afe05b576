package org.jawroom.report.limits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xddf.usermodel.chart.XDDFChartData.Series;
import org.apache.poi.xddf.usermodel.chart.XDDFDataSource;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFChart;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.jawroom.clearance.gap.Limit;
import org.jawroom.geometry.Length;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.search.Recommendation;
import org.jawroom.report.Opened;
import org.jawroom.report.SampleShop;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.format.Rounding;
import org.jawroom.report.xlsx.SheetLimits;
import org.jawroom.report.xlsx.Styles;
import org.jawroom.report.xlsx.book.StableWorkbook;
import org.junit.jupiter.api.Test;

class WhatLimitsSheetTest {

  @Test
  void entries_ofTheSampleShop_areThePlainCounts() throws Exception {
    SampleShop sample = new SampleShop();
    Map<String, List<Long>> margins = new LinkedHashMap<>();
    long limited = 0;
    for (Outcome outcome : sample.outcomes) {
      Limit limit = outcome.recommended().flatMap(Recommendation::limit).orElse(null);
      if (limit != null) {
        limited++;
        margins
            .computeIfAbsent(
                limit.guard().name() + " · " + limit.part().name(), key -> new ArrayList<>())
            .add(outcome.margin().getAsLong());
      }
    }
    List<String> expected = new ArrayList<>();
    List<Map.Entry<String, List<Long>>> rows = new ArrayList<>(margins.entrySet());
    rows.sort((a, b) -> Integer.compare(b.getValue().size(), a.getValue().size()));
    for (Map.Entry<String, List<Long>> row : rows) {
      long[] rising = row.getValue().stream().mapToLong(Long::longValue).sorted().toArray();
      int middle = rising.length / 2;
      long median =
          rising.length % 2 == 1
              ? rising[middle]
              : Math.floorDiv(rising[middle - 1] + rising[middle], 2);
      expected.add(
          row.getKey()
              + "|"
              + (double) rising.length
              + "|"
              + 100.0 * rising.length / limited
              + "|"
              + PeopleUnit.MM.number(rising[0], Rounding.DOWN)
              + "|"
              + PeopleUnit.MM.number(median, Rounding.DOWN));
    }
    assertTrue(expected.size() > WhatLimitsSheet.BARS, "more than the chart shows");
    try (XSSFWorkbook book = Opened.open(sample.shop, sample.advice, PeopleUnit.MM)) {
      XSSFSheet sheet = book.getSheet(WhatLimitsSheet.NAME);
      assertEquals(expected, Opened.rows(sheet));
      assertEquals(WhatLimitsSheet.BARS, assertShowsItsCells(book, sheet));
    }
  }

  @Test
  void nothingLimited_hasNoChart() throws Exception {
    try (XSSFWorkbook book = written(new LimitTally())) {
      XSSFSheet sheet = book.getSheet(WhatLimitsSheet.NAME);
      assertTrue(sheet.createDrawingPatriarch().getCharts().isEmpty());
      assertEquals(List.of(), Opened.rows(sheet));
    }
  }

  @Test
  void oneLimit_isAChartOfOneBar() throws Exception {
    LimitTally tally = new LimitTally();
    tally.add("=door", "it's \"so\"", -Length.MM);
    try (XSSFWorkbook book = written(tally)) {
      XSSFSheet sheet = book.getSheet(WhatLimitsSheet.NAME);
      assertEquals(List.of("=door · it's \"so\"|1.0|100.0|-1.0|-1.0"), Opened.rows(sheet));
      assertEquals(1, assertShowsItsCells(book, sheet));
    }
  }

  private static XSSFWorkbook written(LimitTally tally) throws Exception {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    StableWorkbook.write(
        "Test",
        book ->
            WhatLimitsSheet.add(
                book, new Styles(book.getXSSFWorkbook(), PeopleUnit.MM), tally, SheetLimits.XLSX),
        out);
    return new XSSFWorkbook(new ByteArrayInputStream(out.toByteArray()));
  }

  /**
   * The one chart refers to cells of its sheet that hold what is stored in the chart.
   *
   * @return the number of bars
   */
  public static int assertShowsItsCells(XSSFWorkbook book, XSSFSheet sheet) {
    List<XSSFChart> charts = sheet.createDrawingPatriarch().getCharts();
    assertEquals(1, charts.size());
    assertEquals(1, charts.get(0).getChartSeries().size());
    Series series = charts.get(0).getChartSeries().get(0).getSeries(0);
    assertEquals(1, charts.get(0).getChartSeries().get(0).getSeriesCount());
    assertEquals(stored(series.getCategoryData()), cells(book, sheet, series.getCategoryData()));
    assertEquals(stored(series.getValuesData()), cells(book, sheet, series.getValuesData()));
    return series.getValuesData().getPointCount();
  }

  private static List<String> stored(XDDFDataSource<?> source) {
    List<String> points = new ArrayList<>();
    for (int i = 0; i < source.getPointCount(); i++) {
      Object point = source.getPointAt(i);
      points.add(
          point instanceof Number number ? number.doubleValue() + "" : String.valueOf(point));
    }
    return points;
  }

  private static List<String> cells(XSSFWorkbook book, XSSFSheet sheet, XDDFDataSource<?> source) {
    String range = source.getDataRangeReference();
    CellReference first =
        new CellReference(
            range.substring(0, range.indexOf(':') < 0 ? range.length() : range.indexOf(':')));
    assertEquals(sheet, book.getSheet(first.getSheetName()));
    CellRangeAddress address = CellRangeAddress.valueOf(range);
    List<String> cells = new ArrayList<>();
    for (int row = address.getFirstRow(); row <= address.getLastRow(); row++) {
      XSSFCell cell = sheet.getRow(row).getCell(address.getFirstColumn());
      cells.add(
          switch (cell.getCellType()) {
            case NUMERIC -> cell.getNumericCellValue() + "";
            default -> cell.getStringCellValue();
          });
    }
    return cells;
  }
}
