package org.jawroom.report.matrix;

import java.util.List;
import java.util.OptionalLong;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;
import org.jawroom.advice.Advice;
import org.jawroom.advice.ToTape;
import org.jawroom.advice.ToleranceNeeded;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.format.Rounding;
import org.jawroom.report.format.SheetNames;
import org.jawroom.report.readings.Readings;
import org.jawroom.report.tape.ToTapeWords;
import org.jawroom.report.wording.remedy.RemedyWords;
import org.jawroom.report.xlsx.ListSheet;
import org.jawroom.report.xlsx.ListSheet.Heading;
import org.jawroom.report.xlsx.SheetLimits;
import org.jawroom.report.xlsx.Styles;
import org.jawroom.shop.Shop;

/**
 * The sheet <i>To measure</i>: which readings to tape first, and below how accurately pairings too
 * close to decide would have to be measured.
 */
final class ToMeasureSheet {
  static final String NAME = SheetNames.TO_MEASURE;

  /** Rows of titles and headings between the two tables. */
  private static final int BETWEEN = 4;

  private final ListSheet list;
  private final Styles styles;
  private final PeopleUnit unit;

  private ToMeasureSheet(SXSSFWorkbook book, Styles styles) {
    this.styles = styles;
    this.unit = styles.unit();
    this.list =
        new ListSheet(
            book,
            styles,
            NAME,
            List.of(
                new Heading("Measure", 26),
                new Heading("of", 26),
                new Heading("Settles by itself", 10),
                new Heading("Decides", 10),
                new Heading("Row of", 10),
                new Heading("What it decides", 48),
                new Heading("Settled by it alone, on or with", 60)),
            1,
            false);
  }

  static void add(
      SXSSFWorkbook book, Styles styles, Shop shop, List<Advice> advice, SheetLimits limits) {
    ToMeasureSheet sheet = new ToMeasureSheet(book, styles);
    List<ToTape> readings = ToTape.of(shop, advice);
    List<Advice> close =
        advice.stream().filter(pairing -> pairing.outcome().verdict() == Verdict.MEASURE).toList();
    int room = Math.max(0, ListSheet.room(limits) - BETWEEN);
    int shown = Math.min(readings.size(), room);
    sheet.list.head(
        "To measure", remark(shown, readings.size(), ToTape.hopeless(advice), styles.unit()));
    readings.subList(0, shown).forEach(sheet::reading);
    int below = Math.min(close.size(), room - shown);
    sheet.list.below(
        "Measure again",
        closer(below, close.size(), styles.unit()),
        List.of(
            "Machine",
            "Vise",
            "Misses by",
            "Machine within ±",
            "Vise within ±",
            "It fits",
            "Every reading that counts, each with its share"));
    close.subList(0, below).forEach(sheet::close);
    sheet.list.finish();
  }

  private static String remark(int shown, int all, long hopeless, PeopleUnit unit) {
    String left =
        hopeless == 0
            ? ""
            : " Left out: "
                + hopeless
                + (hopeless == 1 ? " pairing that is" : " pairings that are")
                + " unknown, but cannot fit whatever is measured.";
    return all == 0
        ? "No open reading decides a pairing." + left
        : ListSheet.cut(shown, all, "")
            + "First what settles the most pairings; jawroom tape prints it as a form. Limits in "
            + unit.plural()
            + ", rounded toward less clearance; where several readings are open, with all others at"
            + " their best."
            + left;
  }

  private static String closer(int shown, int all, PeopleUnit unit) {
    return all == 0
        ? "No pairing has the verdict measure."
        : ListSheet.cut(shown, all, "")
            + "In "
            + unit.plural()
            + ". A tolerance stands for all the readings named, each off the wrong way: together"
            + " they may be off by no more.";
  }

  private void reading(ToTape one) {
    ToTapeWords words = new ToTapeWords(unit);
    String within = words.within(one);
    list.entry();
    list.text(one.reading().reading());
    list.text(one.reading().name());
    list.number(one.settled().size(), "0");
    list.number(one.decided().size(), "0");
    list.text(one.reading().table());
    list.text(words.decides(one) + (within.isEmpty() ? "" : "; read it " + within));
    list.text(ToTapeWords.settles(one));
  }

  private void close(Advice pairing) {
    Outcome outcome = pairing.outcome();
    list.entry();
    list.text(outcome.machine().name());
    list.text(outcome.vise().name());
    list.length(missed(outcome), Rounding.UP);
    list.fineLength(
        pairing.toleranceNeeded().map(ToleranceNeeded::machine).orElse(OptionalLong.empty()),
        Rounding.DOWN);
    list.fineLength(
        pairing.toleranceNeeded().map(ToleranceNeeded::vise).orElse(OptionalLong.empty()),
        Rounding.DOWN);
    list.text(ifKnown(pairing));
    list.text(Readings.behind(outcome).map(Readings::words).orElse(""), styles.entry());
  }

  private static OptionalLong missed(Outcome outcome) {
    return outcome.bestMargin().isPresent()
        ? OptionalLong.of(-outcome.bestMargin().getAsLong())
        : OptionalLong.empty();
  }

  private String ifKnown(Advice pairing) {
    String known = pairing.toleranceNeeded().map(new RemedyWords(unit)::known).orElse("");
    Outcome outcome = pairing.outcome();
    String wanted =
        known.isEmpty()
            ? "only if both are known better, neither alone is enough"
            : "if you know " + known;
    return wanted
        + "; now the machine to ±"
        + now(outcome.machine().provenance().tolerance())
        + ", the vise to ±"
        + now(outcome.vise().provenance().tolerance());
  }

  private String now(long tolerance) {
    return unit.fine(tolerance, Rounding.UP);
  }
}
