package org.jawroom.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;
import org.jawroom.advice.Advice;
import org.jawroom.placement.Outcome;
import org.jawroom.report.ListSheet.Heading;
import org.jawroom.shop.Machine;
import org.jawroom.shop.Shop;
import org.jawroom.shop.Vise;

/**
 * The sheets <i>By machine</i> and <i>By vise</i>: how many pairings come to what, the best partner
 * and the range of margins.
 */
final class TallySheet {
  static final String BY_MACHINE = "By machine";
  static final String BY_VISE = "By vise";

  /** One row: what it is of, and its pairings. */
  private record Group(String name, String facts, String caution, List<Advice> pairings) {

    List<Outcome> outcomes() {
      return pairings.stream().map(Advice::outcome).toList();
    }
  }

  private TallySheet() {}

  static void addByMachine(SXSSFWorkbook book, Styles styles, Shop shop, List<Advice> advice) {
    Words words = new Words(styles.unit());
    int across = shop.vises().size();
    List<Group> groups = new ArrayList<>();
    for (int m = 0; m < shop.machines().size(); m++) {
      Machine machine = shop.machines().get(m);
      groups.add(
          new Group(
              machine.name(),
              words.table(machine),
              Words.caution(machine),
              advice.subList(m * across, (m + 1) * across)));
    }
    write(book, styles, BY_MACHINE, "Machine", "Best vise", groups, o -> o.vise().name(), true);
  }

  static void addByVise(SXSSFWorkbook book, Styles styles, Shop shop, List<Advice> advice) {
    Words words = new Words(styles.unit());
    int across = shop.vises().size();
    List<Group> groups = new ArrayList<>();
    for (int v = 0; v < across; v++) {
      Vise vise = shop.vises().get(v);
      List<Advice> column = new ArrayList<>();
      for (int m = 0; m < shop.machines().size(); m++) {
        column.add(advice.get(m * across + v));
      }
      groups.add(new Group(vise.name(), words.jaws(vise), Words.caution(vise), column));
    }
    write(book, styles, BY_VISE, "Vise", "Best machine", groups, o -> o.machine().name(), false);
  }

  private static void write(
      SXSSFWorkbook book,
      Styles styles,
      String name,
      String what,
      String partner,
      List<Group> groups,
      Function<Outcome, String> partnerName,
      boolean perTable) {
    ListSheet list = new ListSheet(book, styles, name, headings(what, partner, perTable), 1);
    list.head(
        name,
        "How many pairings come to what. Margins in "
            + styles.unit().plural()
            + ", rounded toward less; "
            + "the best partner is clear, light enough, within reach and has the largest margin.");
    Map<Integer, Tally> tallies = tallies(groups);
    for (int group = 0; group < groups.size(); group++) {
      if (tallies.containsKey(group)) {
        entry(list, groups.get(group), tallies.get(group), partnerName, perTable);
      }
    }
    list.finish();
  }

  private static Map<Integer, Tally> tallies(List<Group> groups) {
    List<Outcome> all = new ArrayList<>();
    List<Integer> groupOf = new ArrayList<>();
    for (int group = 0; group < groups.size(); group++) {
      for (Outcome outcome : groups.get(group).outcomes()) {
        all.add(outcome);
        groupOf.add(group);
      }
    }
    return Tally.of(all, groupOf);
  }

  private static List<Heading> headings(String what, String partner, boolean perTable) {
    List<Heading> headings = new ArrayList<>();
    headings.add(new Heading(what, 22));
    headings.add(new Heading("Size", 20));
    headings.add(new Heading("Pairings", 9));
    for (Finding finding : Finding.values()) {
      headings.add(new Heading(finding.sign() + " " + finding.brief(), 9));
    }
    headings.add(new Heading(partner, 20));
    headings.add(new Heading("Its margin", 8));
    if (perTable) {
      headings.add(new Heading("How many of it on one table", 9));
      headings.add(new Heading("Most vises of one kind on the table", 22));
    }
    headings.add(new Heading("Least best margin", 8));
    headings.add(new Heading("Greatest best margin", 9));
    headings.add(new Heading("Mind", 25));
    return headings;
  }

  private static void entry(
      ListSheet list,
      Group group,
      Tally tally,
      Function<Outcome, String> partnerName,
      boolean perTable) {
    list.entry();
    list.text(group.name());
    list.text(group.facts());
    list.number(tally.total(), "0");
    for (Finding finding : Finding.values()) {
      list.number(tally.count(finding), "0");
    }
    Outcome best = Standing.best(group.outcomes()).orElse(null);
    if (best == null) {
      list.text("none");
      list.blank(1);
    } else {
      list.text(
          partnerName.apply(best) + (Finding.of(best) == Finding.LIMITED ? " (limited)" : ""));
      list.length(Shown.margin(best), Rounding.DOWN);
    }
    if (perTable) {
      perTable(list, group.pairings(), best);
    }
    list.length(tally.leastMargin(), Rounding.DOWN);
    list.length(tally.greatestMargin(), Rounding.DOWN);
    list.text(group.caution());
  }

  @SuppressWarnings("ReferenceEquality") // that one, not one like it
  private static void perTable(ListSheet list, List<Advice> pairings, Outcome best) {
    pairings.stream()
        .filter(pairing -> pairing.outcome() == best && pairing.sideBySide().isPresent())
        .findFirst()
        .ifPresentOrElse(pairing -> list.number(PerTable.count(pairing), "0"), () -> list.blank(1));
    list.text(PerTable.most(pairings));
  }
}
