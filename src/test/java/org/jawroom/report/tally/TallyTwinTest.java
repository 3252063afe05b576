package org.jawroom.report.tally;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.OptionalLong;
import java.util.TreeMap;
import org.jawroom.advice.Advice;
import org.jawroom.advice.merit.PairingMerit;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.report.SampleShop;
import org.jawroom.report.wording.Finding;
import org.jawroom.shop.Shop;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import tech.tablesaw.aggregate.AggregateFunctions;
import tech.tablesaw.api.DoubleColumn;
import tech.tablesaw.api.IntColumn;
import tech.tablesaw.api.Row;
import tech.tablesaw.api.Table;

/** What is counted pairing by pairing, against a library that groups whole tables. */
class TallyTwinTest {
  private final SampleShop sample = new SampleShop();
  private final Shop shop = sample.shop;
  private final List<Advice> advice = sample.advice;
  private final Totals totals = Totals.of(shop, advice, List.of());
  private final Table table = Table.create("pairings");

  @BeforeEach
  void fill() {
    IntColumn machine = IntColumn.create("machine");
    IntColumn vise = IntColumn.create("vise");
    IntColumn finding = IntColumn.create("finding");
    DoubleColumn margin = DoubleColumn.create("margin");
    for (int i = 0; i < advice.size(); i++) {
      Outcome outcome = advice.get(i).outcome();
      machine.append(i / shop.vises().size());
      vise.append(i % shop.vises().size());
      finding.append(Finding.of(outcome).ordinal());
      // Below 2^53 half-nanometres, so that doubles hold them exactly.
      if (outcome.margin().isPresent()) {
        margin.append(outcome.margin().getAsLong());
      } else {
        margin.appendMissing();
      }
    }
    table.addColumns(IntColumn.indexColumn("pairing", advice.size(), 0), machine, vise, finding);
    table.addColumns(margin);
  }

  @Test
  void counts_ofEveryGroup_areTheLibrarys() {
    for (String by : List.of("machine", "vise")) {
      TreeMap<String, Integer> counted = new TreeMap<>();
      for (Row row : table.summarize("pairing", AggregateFunctions.count).by(by, "finding")) {
        counted.put(
            row.getInt(by) + " " + row.getInt("finding"), (int) row.getNumber("Count [pairing]"));
      }
      TreeMap<String, Integer> ours = new TreeMap<>();
      for (int group = 0; group < groups(by); group++) {
        for (Finding finding : Finding.values()) {
          int count = (int) tally(by, group).count(finding);
          if (count > 0) {
            ours.put(group + " " + finding.ordinal(), count);
          }
        }
      }
      assertEquals(counted, ours, by);
    }
  }

  @Test
  void margins_ofEveryGroup_rangeAsTheLibrarySays() {
    for (String by : List.of("machine", "vise")) {
      for (Row row :
          table.summarize("margin", AggregateFunctions.min, AggregateFunctions.max).by(by)) {
        Tally tally = tally(by, row.getInt(by));
        assertEquals(row.getNumber("Min [margin]"), single(tally.leastMargin()), by);
        assertEquals(row.getNumber("Max [margin]"), single(tally.greatestMargin()), by);
      }
    }
  }

  @Test
  void best_ofEveryMachine_isTheBestOfItsList() {
    int across = shop.vises().size();
    for (int machine = 0; machine < shop.machines().size(); machine++) {
      List<Outcome> its =
          advice.subList(machine * across, (machine + 1) * across).stream()
              .map(Advice::outcome)
              .toList();
      List<Outcome> best = PairingMerit.bestFirst(shop.settings(), its, PairingMerit.OF_VISES);
      assertEquals(best.stream().findFirst(), totals.machine(machine).best().map(Advice::outcome));
    }
  }

  /** As the library prints it: its greatest of a group has come through single precision. */
  private static double single(OptionalLong margin) {
    return margin.isPresent() ? (float) margin.getAsLong() : Double.NaN;
  }

  private int groups(String by) {
    return by.equals("machine") ? shop.machines().size() : shop.vises().size();
  }

  private Tally tally(String by, int group) {
    return by.equals("machine") ? totals.machine(group) : totals.vise(group);
  }
}
