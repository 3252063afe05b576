package org.jawroom.report.matrix;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import java.util.stream.Collectors;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;
import org.jawroom.advice.Advice;
import org.jawroom.clearance.gap.JawEnd;
import org.jawroom.clearance.gap.Limit;
import org.jawroom.geometry.Interval;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.search.Recommendation;
import org.jawroom.placement.space.Play;
import org.jawroom.report.csv.PairingsCsv;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.format.Rounding;
import org.jawroom.report.format.ThreadWords;
import org.jawroom.report.tally.PerTable;
import org.jawroom.report.wording.CaveatWords;
import org.jawroom.report.wording.Finding;
import org.jawroom.report.wording.Words;
import org.jawroom.report.xlsx.ListSheet;
import org.jawroom.report.xlsx.ListSheet.Heading;
import org.jawroom.report.xlsx.SheetLimits;
import org.jawroom.report.xlsx.Styles;

/** The sheet <i>Pairings</i>: the content of {@code pairings.csv} for people. */
public final class PairingsSheet {
  public static final String NAME = "Pairings";

  private static final int LIMIT_COLUMNS = 7;
  private static final int PLACE_COLUMNS = 7;
  private static final int PLAY_COLUMNS = 4;

  private final ListSheet list;
  private final Styles styles;
  private final Words words;

  private PairingsSheet(SXSSFWorkbook book, Styles styles) {
    this.styles = styles;
    this.words = new Words(styles.unit());
    this.list = new ListSheet(book, styles, NAME, headings(), 2);
  }

  /** The address of the first cell of the pairing with that index. */
  static String address(int index) {
    return "A" + (ListSheet.FIRST_ENTRY + index + 1);
  }

  static void add(SXSSFWorkbook book, Styles styles, List<Advice> advice, SheetLimits limits) {
    PairingsSheet sheet = new PairingsSheet(book, styles);
    sheet
        .list
        .head("Pairings", advice, limits, PairingsCsv.FILE, remark(styles.unit()))
        .forEach(sheet::entry);
    sheet.list.finish();
  }

  /** Adds the most important pairings of a shop too large to list them all. */
  public static void addChosen(
      SXSSFWorkbook book, Styles styles, List<Advice> chosen, SheetLimits limits) {
    PairingsSheet sheet = new PairingsSheet(book, styles);
    int shown = Math.min(chosen.size(), ListSheet.room(limits));
    sheet.list.head(
        "Pairings",
        "ONLY THE BEST OF EACH MACHINE AND OF EACH VISE"
            + (shown < chosen.size() ? ", THE FIRST " + shown + " OF " + chosen.size() : "")
            + "; "
            + PairingsCsv.FILE
            + " HAS ALL PAIRINGS. "
            + remark(styles.unit()));
    chosen.subList(0, shown).forEach(sheet::entry);
    sheet.list.finish();
  }

  private static String remark(PeopleUnit unit) {
    return "Lengths in "
        + unit.plural()
        + ", each rounded toward less clearance. Margins are what is left after the required"
        + " clearance and both tolerances: Margin at the place listed, Roomiest margin wherever the"
        + " spindle reaches there. Bare vise, without tool or part.";
  }

  private static List<Heading> headings() {
    List<Heading> headings =
        new ArrayList<>(
            List.of(
                new Heading("Machine", 18),
                new Heading("Vise", 18),
                new Heading("Verdict", 20),
                new Heading("Margin", 9),
                new Heading("Roomiest margin", 10),
                new Heading("Limited by", 16),
                new Heading("Part of the vise", 13),
                new Heading("Along", 8),
                new Heading("While", 9),
                new Heading("Jaws", 8),
                new Heading("Clearance required", 10),
                new Heading("Both tolerances", 10)));
    headings.addAll(
        List.of(
            new Heading("Handle to the", 9),
            new Heading("Stands at x", 9),
            new Heading("Stands at y", 9),
            new Heading("Held by", 11),
            new Heading("Bolts", 7),
            new Heading("Slots", 7),
            new Heading("Can be tapped square", 8),
            new Heading("Jaws may open from", 9),
            new Heading("Jaws may open to", 9),
            new Heading("Room round the handle", 8),
            new Heading("Spindle misses", 8),
            new Heading("Overhang of the base", 10),
            new Heading("Play left", 8),
            new Heading("Play right", 8),
            new Heading("Play front", 8),
            new Heading("Play rear", 8),
            new Heading("Nose not below", 8),
            new Heading("Room over jaws", 8),
            new Heading("Table still carries, kg", 9),
            new Heading("How many on one table", 8),
            new Heading("They stand at, along the slots", 34),
            new Heading("Mind", 40),
            new Heading("Not measured", 26)));
    return headings;
  }

  private void entry(Advice pairing) {
    Outcome outcome = pairing.outcome();
    Finding finding = Finding.of(outcome);
    Recommendation place = outcome.recommended().orElse(null);
    list.entry();
    list.text(outcome.machine().name());
    list.text(outcome.vise().name());
    list.text(Words.signed(finding), styles.entry(finding));
    list.length(outcome.margin(), Rounding.DOWN);
    list.length(outcome.bestMargin(), Rounding.DOWN);
    limit(outcome.recommended().flatMap(Recommendation::limit).orElse(null));
    place(place);
    list.length(end(outcome.usableOpening().map(Interval::lo).stream().toList()), Rounding.UP);
    list.length(end(outcome.usableOpening().map(Interval::hi).stream().toList()), Rounding.DOWN);
    list.length(CaveatWords.handGap(outcome), Rounding.DOWN);
    list.length(
        place == null ? OptionalLong.empty() : OptionalLong.of(place.reachShortfall()),
        Rounding.UP);
    list.length(place == null ? OptionalLong.empty() : place.overhang(), Rounding.UP);
    play(outcome.recommended().flatMap(Recommendation::play).orElse(null));
    list.length(place == null ? OptionalLong.empty() : place.noseNotBelow(), Rounding.UP);
    list.length(outcome.roomOverJaws(), Rounding.DOWN);
    load(outcome.loadLeft().orElse(null));
    together(pairing);
    list.text(mind(pairing));
    list.text(Words.columns(outcome.missing()));
  }

  private void together(Advice pairing) {
    if (pairing.sideBySide().isEmpty()) {
      list.blank(2);
      return;
    }
    list.number(PerTable.count(pairing), "0");
    list.text(
        PerTable.positions(
            pairing, "; ", position -> styles.unit().brief(position, Rounding.NEAREST)));
  }

  private String mind(Advice pairing) {
    List<String> marks = new ArrayList<>(words.marks(pairing.outcome()));
    if (PerTable.count(pairing) > 1 && PerTable.tooHeavy(pairing)) {
      marks.add("all " + PerTable.count(pairing) + " too heavy together");
    }
    return String.join("; ", marks);
  }

  private static OptionalLong end(List<Long> end) {
    return end.isEmpty() ? OptionalLong.empty() : OptionalLong.of(end.get(0));
  }

  private void limit(Limit limit) {
    if (limit == null) {
      list.blank(LIMIT_COLUMNS);
      return;
    }
    list.text(limit.guard().name());
    list.text(limit.part().name());
    list.text(limit.axis().letter());
    list.text(limit.situation().word());
    list.text(limit.opening() == JawEnd.ANY ? "any" : limit.opening().word());
    list.length(limit.required(), Rounding.UP);
    list.length(limit.tolerance(), Rounding.UP);
  }

  private void place(Recommendation place) {
    if (place == null) {
      list.blank(PLACE_COLUMNS);
      return;
    }
    list.text(place.handleTo().word());
    list.length(place.x(), Rounding.NEAREST);
    list.length(place.y(), Rounding.NEAREST);
    list.text(place.mount());
    list.text(ThreadWords.of(place.thread()));
    list.text(place.slots().stream().map(String::valueOf).collect(Collectors.joining(", ")));
    // A negative margin leaves no play and no answer.
    list.text(place.play().isEmpty() ? "" : place.settable() ? "yes" : "no");
  }

  private void play(Play play) {
    if (play == null) {
      list.blank(PLAY_COLUMNS);
      return;
    }
    list.length(play.left(), Rounding.DOWN);
    list.length(play.right(), Rounding.DOWN);
    list.length(play.front(), Rounding.DOWN);
    list.length(play.rear(), Rounding.DOWN);
  }

  private void load(BigDecimal left) {
    if (left == null) {
      list.blank(1);
    } else {
      list.number(left.setScale(1, RoundingMode.FLOOR).doubleValue(), "0.0");
    }
  }
}
