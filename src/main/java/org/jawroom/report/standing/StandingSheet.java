package org.jawroom.report.standing;

import java.util.List;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;
import org.jawroom.placement.standing.StandingOutcome;
import org.jawroom.report.format.Rounding;
import org.jawroom.report.wording.Words;
import org.jawroom.report.xlsx.ListSheet;
import org.jawroom.report.xlsx.ListSheet.Heading;
import org.jawroom.report.xlsx.SheetLimits;
import org.jawroom.report.xlsx.Styles;

/** The sheet <i>Standing</i>: whether each vise is safe where it stands now. */
public final class StandingSheet {

  /** The name of the sheet. */
  public static final String NAME = "Standing";

  private final ListSheet list;
  private final Styles styles;
  private final StandingWords words;

  private StandingSheet(SXSSFWorkbook book, Styles styles) {
    this.styles = styles;
    this.words = new StandingWords(styles.unit());
    this.list =
        new ListSheet(
            book,
            styles,
            NAME,
            List.of(
                new Heading("Machine", 22),
                new Heading("Vise", 20),
                new Heading("There", 16),
                new Heading("Margin", 9),
                new Heading("Limited by", 28),
                new Heading("Stands", 48),
                new Heading("To the recommended place", 34),
                new Heading("Mind", 38)),
            2);
  }

  /** Adds the sheet, one entry for each outcome in the order given. */
  public static void add(
      SXSSFWorkbook book, Styles styles, List<StandingOutcome> standing, SheetLimits limits) {
    StandingSheet sheet = new StandingSheet(book, styles);
    String remark =
        "Each vise where it stands now, over its full opening, without a part or a tool. Margin:"
            + " the least within the tolerance of its two measures, in "
            + styles.unit().plural()
            + ". Under Mind: other vises on the same table that are closer than the spacing.";
    sheet
        .list
        .head("Is it safe where it stands?", standing, limits, StandingCsv.FILE, remark)
        .forEach(sheet::entry);
    sheet.list.finish();
  }

  private void entry(StandingOutcome outcome) {
    list.entry();
    list.text(outcome.standing().machine().name());
    list.text(outcome.standing().vise().name());
    list.text(words.signed(outcome), styles.entry(words.finding(outcome)));
    list.length(outcome.margin(), Rounding.DOWN);
    list.text(outcome.limit().map(Words::limit).orElse(""));
    list.text(String.join("\n", words.place(outcome.standing())));
    list.text(words.move(outcome).orElse(""));
    list.text(String.join("\n", words.minds(outcome)));
  }
}
