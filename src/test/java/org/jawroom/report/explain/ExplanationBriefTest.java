package org.jawroom.report.explain;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jawroom.advice.Advisor;
import org.jawroom.advice.Explanation;
import org.jawroom.fixture.ShopCsv;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.reference.random.RandomShops;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.shop.Shop;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.vise.Vise;
import org.jawroom.tables.ShopReader;
import org.jawroom.tables.source.grid.UnreadableInput;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What every brief explanation keeps to, on every pairing at hand. */
class ExplanationBriefTest {
  private static final int MOST = 40;
  private static final int COLUMNS = 80;
  private static final List<String> WARNINGS =
      List.of("one that is long enough to need more than a line ".repeat(4), "two", "three");

  static Stream<Path> shops() throws IOException {
    try (Stream<Path> golden = Files.list(Path.of("src/test/resources/org/jawroom/golden"))) {
      List<Path> all =
          golden.filter(shop -> Files.exists(shop.resolve("machines.csv"))).sorted().toList();
      return Stream.concat(all.stream(), Stream.of(Path.of("inputs/demo")));
    }
  }

  @ParameterizedTest
  @MethodSource("shops")
  void brief_ofEveryPairing_isReadInAMinute(Path folder) throws UnreadableInput {
    Shop shop = ShopReader.read(folder, Map.of()).shop().orElseThrow();
    for (Machine machine : shop.machines()) {
      for (Vise vise : shop.vises()) {
        check(shop, machine, vise, folder.toString());
      }
    }
  }

  @Test
  void brief_ofRandomPairings_isReadInAMinute() {
    Map<Verdict, Integer> seen = new EnumMap<>(Verdict.class);
    for (RandomShops.Profile profile : RandomShops.Profile.values()) {
      for (long seed = 0; seed < 25; seed++) {
        Shop shop = RandomShops.shop(profile, seed);
        Verdict verdict =
            check(
                shop,
                RandomShops.machine(shop),
                RandomShops.vise(shop),
                profile + " seed " + seed + "\n" + ShopCsv.text(shop));
        seen.merge(verdict, 1, Integer::sum);
      }
    }
    assertEquals(Verdict.values().length, seen.size(), () -> "verdicts seen: " + seen);
  }

  private static Verdict check(Shop shop, Machine machine, Vise vise, String which) {
    Explanation explanation = Advisor.explain(shop.settings(), machine, vise);
    Outcome outcome = explanation.advice().outcome();
    for (PeopleUnit unit : PeopleUnit.values()) {
      ExplainFacts facts =
          new ExplainFacts(
              unit, shop.settings(), explanation, List.of(outcome), List.of(outcome), WARNINGS);
      List<String> lines = ExplanationBrief.lines(facts, COLUMNS);
      String text = which + "\n" + String.join("\n", lines);
      assertTrue(lines.size() <= MOST, () -> lines.size() + " lines: " + text);
      assertTrue(
          lines.stream().allMatch(line -> line.codePointCount(0, line.length()) <= COLUMNS),
          () -> "a line is too long: " + text);
      assertTrue(lines.get(1).startsWith(outcome.verdict().code()), text);
      boolean plain = lines.get(1).startsWith("fits: ");
      assertEquals(outcome.isPlainFit(), plain, text);
      boolean nearest = lines.stream().anyMatch(line -> line.startsWith("Where to "));
      if (outcome.verdict() == Verdict.NO_PLACE || outcome.verdict() == Verdict.MEASURE) {
        assertFalse(nearest, text);
      }
      long gaps =
          lines.stream().filter(line -> line.matches(" +-?[0-9.]+ +-?[0-9.]+ {2}.*")).count();
      assertTrue(gaps >= Math.min(1, explanation.pairs().size()) && gaps <= 6, text);
    }
    return outcome.verdict();
  }
}
