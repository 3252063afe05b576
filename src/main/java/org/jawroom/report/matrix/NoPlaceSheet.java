package org.jawroom.report.matrix;

import java.util.List;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;
import org.jawroom.clearance.gap.Limit;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.search.Recommendation;
import org.jawroom.report.format.Rounding;
import org.jawroom.report.wording.Finding;
import org.jawroom.report.wording.Words;
import org.jawroom.report.xlsx.ListSheet;
import org.jawroom.report.xlsx.ListSheet.Heading;
import org.jawroom.report.xlsx.SheetLimits;
import org.jawroom.report.xlsx.Styles;

/** The sheet <i>No place</i>: the pairings without a place, the shortfall and the obstacle. */
final class NoPlaceSheet {
  static final String NAME = "No place";

  private final ListSheet list;
  private final Styles styles;
  private final Words words;

  private NoPlaceSheet(SXSSFWorkbook book, Styles styles) {
    this.styles = styles;
    this.words = new Words(styles.unit());
    this.list =
        new ListSheet(
            book,
            styles,
            NAME,
            List.of(
                new Heading("Machine", 26),
                new Heading("Vise", 26),
                new Heading("Why not", 44),
                new Heading("Misses by", 10),
                new Heading("What is hit, by which part", 38),
                new Heading("Along", 8),
                new Heading("Nearest with the handle to the", 14),
                new Heading("Mind", 22)),
            2);
  }

  static void add(SXSSFWorkbook book, Styles styles, List<Outcome> outcomes, SheetLimits limits) {
    NoPlaceSheet sheet = new NoPlaceSheet(book, styles);
    List<Outcome> misfits = outcomes.stream().filter(NoPlaceSheet::isMisfit).toList();
    String remark =
        misfits.isEmpty()
            ? "Every pairing has a place, or too little of it was measured."
            : "Missing lengths in "
                + styles.unit().plural()
                + ", at the place where least is missing, required clearance and tolerances included.";
    sheet.list.head("No place", misfits, limits, "", remark).forEach(sheet::entry);
    sheet.list.finish();
  }

  private static boolean isMisfit(Outcome outcome) {
    Finding finding = Finding.of(outcome);
    return finding == Finding.NO_PLACE || finding == Finding.NO_MOUNT;
  }

  private void entry(Outcome outcome) {
    Finding finding = Finding.of(outcome);
    Limit limit = outcome.recommended().flatMap(Recommendation::limit).orElse(null);
    list.entry();
    list.text(outcome.machine().name());
    list.text(outcome.vise().name());
    list.text(why(outcome, finding), styles.entry(finding));
    if (limit == null) {
      list.blank(4);
    } else {
      list.length(-limit.margin(), Rounding.UP);
      list.text(Words.limit(limit));
      list.text(limit.axis().letter());
      list.text(outcome.recommended().orElseThrow().handleTo().word());
    }
    list.text(String.join("; ", words.marks(outcome)));
  }

  private String why(Outcome outcome, Finding finding) {
    return outcome.recommended().isPresent()
        ? Words.signed(finding)
        : Words.signed(finding) + ": " + words.reason(outcome);
  }
}
