package org.jawroom.report.limits;

import java.util.List;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.jawroom.report.format.PlainText;
import org.jawroom.report.format.Rounding;
import org.jawroom.report.limits.LimitTally.Limited;
import org.jawroom.report.xlsx.ListSheet;
import org.jawroom.report.xlsx.ListSheet.Heading;
import org.jawroom.report.xlsx.SheetLimits;
import org.jawroom.report.xlsx.Styles;

/** The sheet <i>What limits</i>: guards and the parts that meet them, the most frequent first. */
public final class WhatLimitsSheet {
  public static final String NAME = "What limits";

  /** So many bars are read at a glance. */
  static final int BARS = 12;

  private static final List<Heading> HEADINGS =
      List.of(
          new Heading("What limits, by which part", 44),
          new Heading("Pairings", 10),
          new Heading("Share of all limited, %", 10),
          new Heading("Least margin", 10),
          new Heading("Median margin", 10));

  private static final int COUNTS = 1;

  /** The columns that the chart covers, beside the list. */
  private static final int CHART_FROM = HEADINGS.size() + 1;

  private static final int CHART_TO = CHART_FROM + 11;

  /** Rows of the chart besides those of its bars. */
  private static final int CHART_HEAD = 9;

  private WhatLimitsSheet() {}

  public static void add(
      SXSSFWorkbook book, Styles styles, LimitTally limits, SheetLimits sheetLimits) {
    ListSheet list = new ListSheet(book, styles, NAME, HEADINGS, 1);
    List<Limited> shown =
        list.head(
            NAME,
            limits.rows(),
            sheetLimits,
            "",
            "The guard and the part that leave the least room at the recommended place; "
                + limits.total()
                + " pairings have one. Margins in "
                + styles.unit().plural()
                + ", rounded toward less.");
    for (Limited row : shown) {
      list.entry();
      list.text(row.words());
      list.number((double) row.margins().count(), "0");
      list.number(100.0 * row.margins().count() / limits.total(), "0.0");
      list.length(row.margins().least(), Rounding.DOWN);
      list.length(row.margins().median(), Rounding.DOWN);
    }
    list.finish();
    List<Limited> bars = shown.subList(0, Math.min(BARS, shown.size()));
    if (!bars.isEmpty()) {
      new SheetChart(
              bars.size() < shown.size()
                  ? "What limits most: the first " + bars.size()
                  : "What limits most",
              ListSheet.FIRST_ENTRY,
              0,
              bars.stream().map(row -> PlainText.forCell(row.words())).toList(),
              COUNTS,
              bars.stream().map(row -> (long) row.margins().count()).toList())
          .lying(book, NAME, where(bars.size()));
    }
  }

  private static XSSFClientAnchor where(int bars) {
    int top = ListSheet.FIRST_ENTRY - 1;
    return new XSSFClientAnchor(0, 0, 0, 0, CHART_FROM, top, CHART_TO, top + CHART_HEAD + 2 * bars);
  }
}
