package org.jawroom.report.set;

import java.util.List;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;
import org.jawroom.placement.set.SetOutcome;
import org.jawroom.report.format.Rounding;
import org.jawroom.report.xlsx.ListSheet;
import org.jawroom.report.xlsx.ListSheet.Heading;
import org.jawroom.report.xlsx.SheetLimits;
import org.jawroom.report.xlsx.Styles;
import org.jawroom.shop.Settings;

/** The sheet <i>Sets</i>: which vises stand on one table together, and where. */
public final class SetsSheet {
  static final String NAME = "Sets";

  private final ListSheet list;
  private final Styles styles;
  private final SetWords words;

  private SetsSheet(SXSSFWorkbook book, Styles styles, Settings settings) {
    this.styles = styles;
    this.words = new SetWords(styles.unit(), settings);
    this.list =
        new ListSheet(
            book,
            styles,
            NAME,
            List.of(
                new Heading("Set", 24),
                new Heading("Machine", 24),
                new Heading("Together", 16),
                new Heading("Least", 9),
                new Heading("From left to right (slots along y: front to back)", 88),
                new Heading("Mind", 40)),
            2);
  }

  /** Adds the sheet, one entry for each outcome in the order given. */
  public static void add(
      SXSSFWorkbook book,
      Styles styles,
      Settings settings,
      List<SetOutcome> sets,
      SheetLimits limits) {
    SetsSheet sheet = new SetsSheet(book, styles, settings);
    String remark =
        "Each vise over its full opening, without a part or a tool. Least: of the margins and of the gaps between"
            + " two vises beyond the spacing, in "
            + styles.unit().plural()
            + ".";
    sheet
        .list
        .head("Vises together on one table", sets, limits, SetsCsv.FILE, remark)
        .forEach(sheet::entry);
    sheet.list.finish();
  }

  private void entry(SetOutcome outcome) {
    list.entry();
    list.text(outcome.set().name() + "\n" + SetWords.vises(outcome.set()));
    list.text(outcome.machine().name());
    list.text(words.signed(outcome), styles.entry(words.finding(outcome)));
    list.length(outcome.least(), Rounding.DOWN);
    list.text(String.join("\n", words.lines(outcome)));
    list.text(String.join("\n", words.minds(outcome)));
  }
}
