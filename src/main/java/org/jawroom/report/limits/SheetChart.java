package org.jawroom.report.limits;

import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.util.LocaleUtil;
import org.apache.poi.xddf.usermodel.XDDFColor;
import org.apache.poi.xddf.usermodel.XDDFSolidFillProperties;
import org.apache.poi.xddf.usermodel.chart.AxisCrossBetween;
import org.apache.poi.xddf.usermodel.chart.AxisCrosses;
import org.apache.poi.xddf.usermodel.chart.AxisOrientation;
import org.apache.poi.xddf.usermodel.chart.AxisPosition;
import org.apache.poi.xddf.usermodel.chart.BarDirection;
import org.apache.poi.xddf.usermodel.chart.ChartTypes;
import org.apache.poi.xddf.usermodel.chart.XDDFBarChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFCategoryAxis;
import org.apache.poi.xddf.usermodel.chart.XDDFChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFDataSourcesFactory;
import org.apache.poi.xddf.usermodel.chart.XDDFValueAxis;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;
import org.apache.poi.xssf.usermodel.XSSFChart;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;

/**
 * A native chart of one series, counts of pairings, that shows cells of its own sheet. The numbers
 * are stored in the chart besides, since rows written earlier have left memory.
 *
 * @param first the first row of cells shown, counted from 0
 * @param words the names of the cells, in column {@code wordsColumn} from row {@code first} on
 * @param counts what stands in column {@code countsColumn} of the same rows
 */
public record SheetChart(
    String title,
    int first,
    int wordsColumn,
    List<String> words,
    int countsColumn,
    List<Long> counts) {

  /** The blue that means that something can stand, darker, so that it shows on paper. */
  private static final String COLOUR = "4F8FBF";

  /** The gap between two bars in percent of a bar. */
  private static final int GAP = 40;

  public SheetChart {
    words = List.copyOf(words);
    counts = List.copyOf(counts);
    if (words.isEmpty() || words.size() != counts.size()) {
      throw new IllegalArgumentException(words.size() + " words, " + counts.size() + " counts");
    }
  }

  /** Draws bars that lie, the first on top, for long words. */
  public void lying(SXSSFWorkbook book, String sheet, XSSFClientAnchor where) {
    draw(book, sheet, where, BarDirection.BAR);
  }

  /** Draws bars that stand, for what has an order. */
  public void standing(SXSSFWorkbook book, String sheet, XSSFClientAnchor where) {
    draw(book, sheet, where, BarDirection.COL);
  }

  /** The library writes the locale beside each text. */
  private void draw(
      SXSSFWorkbook book, String sheet, XSSFClientAnchor where, BarDirection direction) {
    LocaleUtil.setUserLocale(Locale.ENGLISH);
    try {
      drawInEnglish(book, sheet, where, direction);
    } finally {
      LocaleUtil.resetUserLocale();
    }
  }

  private void drawInEnglish(
      SXSSFWorkbook book, String sheet, XSSFClientAnchor where, BarDirection direction) {
    boolean lying = direction == BarDirection.BAR;
    XSSFChart chart =
        book.getXSSFWorkbook().getSheet(sheet).createDrawingPatriarch().createChart(where);
    chart.setTitleText(title);
    chart.setTitleOverlay(false);
    XDDFCategoryAxis names =
        chart.createCategoryAxis(lying ? AxisPosition.LEFT : AxisPosition.BOTTOM);
    XDDFValueAxis numbers = chart.createValueAxis(lying ? AxisPosition.BOTTOM : AxisPosition.LEFT);
    numbers.setMinimum(0);
    numbers.setTitle("pairings");
    numbers.setNumberFormat("0");
    numbers.setCrossBetween(AxisCrossBetween.BETWEEN);
    if (lying) {
      names.setOrientation(AxisOrientation.MAX_MIN);
      // From the top down, the numbers stand below the last bar.
      numbers.setCrosses(AxisCrosses.MAX);
    }
    XDDFBarChartData data = (XDDFBarChartData) chart.createData(ChartTypes.BAR, names, numbers);
    data.setBarDirection(direction);
    data.setGapWidth(GAP);
    data.setVaryColors(false);
    XDDFChartData.Series series =
        data.addSeries(
            XDDFDataSourcesFactory.fromArray(
                words.toArray(String[]::new), range(sheet, wordsColumn), wordsColumn),
            XDDFDataSourcesFactory.fromArray(
                counts.toArray(Long[]::new), range(sheet, countsColumn), countsColumn));
    series.setTitle("pairings", null);
    series.setFillProperties(
        new XDDFSolidFillProperties(XDDFColor.from(HexFormat.of().parseHex(COLOUR))));
    chart.plot(data);
  }

  private String range(String sheet, int column) {
    return new CellRangeAddress(first, first + words.size() - 1, column, column)
        .formatAsString(sheet, true);
  }
}
