package org.jawroom.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xddf.usermodel.chart.XDDFChartData.Series;
import org.apache.poi.xddf.usermodel.chart.XDDFDataSource;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFChart;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Holds a chart of a workbook against the cells that it shows. */
public final class ChartCells {
  private ChartCells() {}

  /**
   * The one chart refers to cells of its sheet that hold what is stored in the chart.
   *
   * @return the number of bars
   */
  public static int assertShown(XSSFWorkbook book, XSSFSheet sheet) {
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
