package org.jawroom.report;

import static org.jawroom.fixture.outcome.Invented.machine;
import static org.jawroom.fixture.outcome.Invented.vise;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jawroom.clearance.Situation;
import org.jawroom.clearance.gap.JawEnd;
import org.jawroom.fixture.outcome.Advised;
import org.jawroom.fixture.outcome.Made;
import org.jawroom.geometry.Axis;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.tally.ShopOutcomes;
import org.jawroom.report.tally.Totals;
import org.jawroom.shop.Settings;
import org.jawroom.shop.Shop;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.vise.Vise;
import org.junit.jupiter.api.Test;

class SummaryTest {
  private final Machine a = machine("mill A");
  private final Machine b = machine("B\u001b[2J");
  private final Vise v = vise("plain");
  private final Vise w = vise("six inch");

  private static Outcome made(Machine machine, Vise vise, Verdict verdict, String margin) {
    Made made =
        new Made(machine, vise, verdict)
            .best(margin)
            .limit(margin, "door", "screw front", Axis.Y, Situation.CUTTING, JawEnd.OPEN);
    return verdict == Verdict.LIMITED ? made.best("-1").usable("10", "50").done() : made.done();
  }

  @Test
  void lines_giveCountsWorstBestAndWhere() {
    Shop shop = new Shop(Settings.DEFAULTS, List.of(a, b), List.of(v, w), List.of());
    List<Outcome> outcomes =
        List.of(
            made(a, v, Verdict.LIMITED, "2.19"), made(a, w, Verdict.MEASURE, "-0.01"),
            made(b, v, Verdict.NO_PLACE, "-20.875"), new Made(b, w, Verdict.UNKNOWN).done());
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
      assertEquals(
          List.of(
              "4 pairings: 2 machines x 2 vises",
              "      1  measure: fits only if the readings are better than stated: measure again",
              "      1  limited: fits only while the jaws stay within the opening shown",
              "      1  no place: can be held on this table, but hits something wherever it stands",
              "      1  unknown: a reading that decides it is blank or known only within bounds",
              "Worst pairings:",
              "     -20.9 mm  B?[2J x plain: door - screw front, open",
              "      -0.1 mm  mill A x six inch: door - screw front, open",
              "Best vise of each machine:",
              "  mill A: plain, 2.1 mm to spare (limited: keep open 10 to 50)",
              "  B?[2J: none",
              "Written: " + Path.of("out", "pairings.csv")),
          Summary.lines(
              Totals.of(shop, Advised.bare(outcomes), List.of()),
              ShopOutcomes.NONE,
              PeopleUnit.MM,
              List.of(Path.of("out", "pairings.csv"))));
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void lines_ofALargeShop_stayFew() {
    List<Machine> machines = new ArrayList<>();
    List<Outcome> outcomes = new ArrayList<>();
    for (int i = 0; i < 30; i++) {
      machines.add(machine("m" + i));
      outcomes.add(made(machines.get(i), v, Verdict.NO_PLACE, "-" + (i + 1)));
    }
    Shop shop = new Shop(Settings.DEFAULTS, machines, List.of(v), List.of());
    List<String> lines = lines(shop, outcomes, "matrix.xlsx");
    assertEquals(2 + 1 + 5 + 1 + 1 + 20 + 1 + 1, lines.size());
    assertTrue(lines.contains("  and 25 more: see Pairings in matrix.xlsx"));
    assertTrue(lines.contains("  and 10 more: see By machine in matrix.xlsx"));
    assertTrue(
        lines.contains("     -1.19 in  m29 x plain: door - screw front, open"), lines::toString);
  }

  @Test
  void lines_withoutAWorkbook_leadToTheTable() {
    List<Outcome> outcomes = new ArrayList<>();
    List<Machine> machines = new ArrayList<>();
    for (int i = 0; i < 30; i++) {
      machines.add(machine("m" + i));
      outcomes.add(made(machines.get(i), v, Verdict.NO_PLACE, "-" + (i + 1)));
    }
    Shop shop = new Shop(Settings.DEFAULTS, machines, List.of(v), List.of());
    List<String> lines = lines(shop, outcomes, "pairings.csv");
    assertTrue(lines.contains("  and 25 more: see pairings.csv"), lines::toString);
    assertTrue(lines.contains("  and 10 more: see pairings.csv"), lines::toString);
  }

  private static List<String> lines(Shop shop, List<Outcome> outcomes, String report) {
    return Summary.lines(
        Totals.of(shop, Advised.bare(outcomes), List.of()),
        ShopOutcomes.NONE,
        PeopleUnit.INCH,
        List.of(Path.of("out", report)));
  }
}
