package org.jawroom.report.matrix;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;
import org.jawroom.advice.Advice;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.report.format.Rounding;
import org.jawroom.report.tally.PerTable;
import org.jawroom.report.tally.Tally;
import org.jawroom.report.tally.Totals;
import org.jawroom.report.wording.Finding;
import org.jawroom.report.wording.Words;
import org.jawroom.report.xlsx.ListSheet;
import org.jawroom.report.xlsx.ListSheet.Heading;
import org.jawroom.report.xlsx.Styles;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.vise.Vise;

/**
 * The sheets <i>By machine</i> and <i>By vise</i>: counts of findings, the best partner and the
 * range of margins.
 */
public final class TallySheet {
  public static final String BY_MACHINE = "By machine";
  static final String BY_VISE = "By vise";

  /** One row: a machine or vise and the tally of its pairings. */
  private record Group(String name, String facts, String caution, Tally tally) {}

  /** What makes the best one, up to the widths. */
  private static final String BEST =
      "The best one holds the most pieces; then fits goes before awkward and limited, bolts before"
          + " clamps, a place where it can be tapped square, a comfortable margin, the least missing"
          + " reach, ";

  private static final String BEST_VISE = BEST + "the widest opening, the widest jaw, the margin.";
  private static final String BEST_MACHINE = BEST + "the margin.";

  private TallySheet() {}

  /**
   * Adds the sheet with a line for each machine.
   *
   * @param perTable whether the number of vises on one table is known
   */
  public static void addByMachine(
      SXSSFWorkbook book, Styles styles, Totals totals, boolean perTable) {
    Words words = new Words(styles.unit());
    List<Group> groups = new ArrayList<>();
    for (Machine machine : totals.shop().machines()) {
      groups.add(
          new Group(
              machine.name(),
              words.table(machine),
              Words.caution(machine),
              totals.machine(groups.size())));
    }
    write(
        book,
        styles,
        BY_MACHINE,
        BEST_VISE,
        headings("Machine", "Best vise", perTable),
        groups,
        o -> o.vise().name(),
        perTable);
  }

  public static void addByVise(SXSSFWorkbook book, Styles styles, Totals totals) {
    Words words = new Words(styles.unit());
    List<Group> groups = new ArrayList<>();
    for (Vise vise : totals.shop().vises()) {
      groups.add(
          new Group(
              vise.name(), words.jaws(vise), Words.caution(vise), totals.vise(groups.size())));
    }
    write(
        book,
        styles,
        BY_VISE,
        BEST_MACHINE,
        headings("Vise", "Best machine", false),
        groups,
        o -> o.machine().name(),
        false);
  }

  private static void write(
      SXSSFWorkbook book,
      Styles styles,
      String name,
      String best,
      List<Heading> headings,
      List<Group> groups,
      Function<Outcome, String> partnerName,
      boolean perTable) {
    ListSheet list = new ListSheet(book, styles, name, headings, 1);
    list.head(
        name,
        "How many pairings have which verdict. Margins in "
            + styles.unit().plural()
            + ", rounded toward less. "
            + best);
    for (Group group : groups) {
      if (group.tally().total() > 0) {
        entry(list, group, partnerName, perTable);
      }
    }
    list.finish();
  }

  private static List<Heading> headings(String what, String partner, boolean perTable) {
    List<Heading> headings = new ArrayList<>();
    headings.add(new Heading(what, 20));
    headings.add(new Heading("Size", 20));
    headings.add(new Heading("Pairings", 9));
    for (Finding finding : Finding.values()) {
      headings.add(new Heading(Words.signed(finding), 9));
    }
    headings.add(new Heading(partner, 20));
    headings.add(new Heading("Its margin", 8));
    if (perTable) {
      headings.add(new Heading("How many of it on one table", 9));
      headings.add(new Heading("Most vises of one kind on the table", 20));
    }
    headings.add(new Heading("Least margin", 8));
    headings.add(new Heading("Greatest margin", 9));
    headings.add(new Heading("Mind", 20));
    return headings;
  }

  private static void entry(
      ListSheet list, Group group, Function<Outcome, String> partnerName, boolean perTable) {
    Tally tally = group.tally();
    Outcome best = tally.best().map(Advice::outcome).orElse(null);
    list.entry();
    list.text(group.name());
    list.text(group.facts());
    list.number((double) tally.total(), "0");
    for (Finding finding : Finding.values()) {
      list.number((double) tally.count(finding), "0");
    }
    if (best == null) {
      list.text("none");
      list.blank(1);
    } else {
      list.text(
          partnerName.apply(best)
              + (Finding.of(best) == Finding.FITS ? "" : " (" + Finding.of(best).brief() + ")"));
      list.length(best.margin(), Rounding.DOWN);
    }
    if (perTable) {
      perTable(list, tally);
    }
    list.length(tally.leastMargin(), Rounding.DOWN);
    list.length(tally.greatestMargin(), Rounding.DOWN);
    list.text(group.caution());
  }

  private static void perTable(ListSheet list, Tally tally) {
    tally
        .best()
        .filter(best -> best.sideBySide().isPresent())
        .ifPresentOrElse(best -> list.number(PerTable.count(best), "0"), () -> list.blank(1));
    list.text(PerTable.most(tally));
  }
}
