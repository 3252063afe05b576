package org.jawroom.report.limits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.jawroom.clearance.gap.Limit;
import org.jawroom.geometry.Length;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.search.Recommendation;
import org.jawroom.report.ChartCells;
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
      long median = rising[(rising.length - 1) / 2];
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
      assertEquals(WhatLimitsSheet.BARS, ChartCells.assertShown(book, sheet));
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
      assertEquals(1, ChartCells.assertShown(book, sheet));
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
}
