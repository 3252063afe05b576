package org.jawroom.report.explain;

import static org.jawroom.fixture.outcome.Invented.known;
import static org.jawroom.fixture.outcome.Invented.mm;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.jawroom.advice.Advisor;
import org.jawroom.advice.Explanation;
import org.jawroom.fixture.ShopCsv;
import org.jawroom.geometry.Length;
import org.jawroom.placement.job.JobPairing;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.reference.random.RandomShops;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.shop.Job;
import org.jawroom.shop.Shop;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.machine.Side;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.vise.Vise;
import org.jawroom.tables.ShopReader;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** What an explanation states of readings known within bounds. */
class ExplainBoundsTest {
  private static final Path GOLDEN = Path.of("src/test/resources/org/jawroom/golden");
  private static final Pattern MARGINS =
      Pattern.compile("Best margin from (-?[0-9.]+) to (-?[0-9.]+) mm, .*");

  private static Shop shop;

  @BeforeAll
  static void read() throws Exception {
    shop = ShopReader.read(GOLDEN.resolve("example"), Map.of()).shop().orElseThrow();
  }

  private static Machine roomy(Dimension rearGap) {
    return shop.machines().get(0).withGap(Side.REAR, rearGap);
  }

  private static Dimension range(String lo, String hi) {
    return Dimension.within(mm(lo), mm(hi));
  }

  private static List<String> lines(Machine machine, Vise vise) {
    Explanation explanation = Advisor.explain(shop.settings(), machine, vise);
    return ExplanationText.lines(
        new ExplainFacts(
            PeopleUnit.MM, shop.settings(), explanation, List.of(), List.of(), List.of()),
        Integer.MAX_VALUE);
  }

  private static String line(List<String> lines, String start) {
    return lines.stream().filter(line -> line.startsWith(start)).findFirst().orElse("");
  }

  /** The golden shop fits from a rear gap of 4.35 mm on, see its README. */
  @Test
  void explain_rangeAboveTheLimit_holdsForAllOfIt() {
    Vise plain = shop.vises().get(0);
    for (String least : List.of("4.35", "4.36", "10")) {
      List<String> lines = lines(roomy(range(least, "40")), plain);
      assertTrue(lines.get(1).startsWith("fits"), lines.get(1));
      assertEquals(
          "That holds whatever rear_gap is, from " + least + " to 40 mm.",
          line(lines, "That holds"));
    }
    List<String> below = lines(roomy(range("4.34", "40")), plain);
    assertFalse(below.get(1).startsWith("fits"), below.get(1));
  }

  @Test
  void explain_unknown_namesRangeMarginsAndLimit() {
    List<String> lines = lines(roomy(range("-200", "40")), shop.vises().get(0));
    assertEquals("unknown: known only as rear_gap from -200 to 40 mm.", lines.get(1));
    assertEquals(
        "Best margin from -104.35 to 34.65 mm, every open reading at worst and at best; hand room not counted.",
        lines.get(2));
    assertTrue(lines.contains("  fits if rear_gap ≥ 4.35"), () -> String.join("\n", lines));
  }

  @Test
  void explain_hopelessAtBest_saysSoForAllValues() {
    List<String> lines = lines(roomy(range("-300", "-200")), shop.vises().get(0));
    assertTrue(lines.get(1).startsWith("no place: "), lines.get(1));
    assertEquals(
        "That holds whatever rear_gap is, from -300 to -200 mm.", line(lines, "That holds"));
  }

  @Test
  void explain_nothingOpen_saysNothingOfBounds() {
    List<String> lines = lines(roomy(known("40")), shop.vises().get(0));
    assertEquals("", line(lines, "That holds"));
    assertEquals("", line(lines, "Best margin"));
  }

  /** With two open readings, a limit is necessary; the sure one holds whatever the other is. */
  @Test
  void explain_twoOpen_saysFromWhichValueOnItIsSure() {
    Machine machine = roomy(range("-200", "40")).withGap(Side.FRONT, range("60", "80"));
    List<String> lines = lines(machine, shop.vises().get(0));
    assertEquals(
        "unknown: known only as front_gap from 60 to 80 mm, rear_gap from -200 to 40 mm.",
        lines.get(1));
    assertEquals(
        "Best margin from -104.35 to 34.65 mm, every open reading at worst and at best; hand room not counted.",
        lines.get(2));
    assertTrue(lines.contains("  can fit whatever front_gap is"), () -> String.join("\n", lines));
    assertTrue(
        lines.contains("  fits if rear_gap ≥ 4.35, whatever the others are"),
        () -> String.join("\n", lines));

    // A door that may stand where the screw is takes from what the rear gap alone makes sure.
    Machine tight = roomy(range("-200", "40")).withGap(Side.FRONT, range("-50", "80"));
    List<String> less = lines(tight, shop.vises().get(0));
    assertTrue(less.contains("  can fit if rear_gap ≥ 4.35"), () -> String.join("\n", less));
  }

  /** What is printed of every random pairing is what the outcome has, rounded down to 0.01 mm. */
  @Test
  void explain_randomPairings_agreeWithTheOutcome() {
    int unknown = 0;
    int decided = 0;
    List<RandomShops.Profile> profiles =
        List.of(RandomShops.Profile.BLANKS, RandomShops.Profile.STRAPPED_BLANKS);
    for (RandomShops.Profile profile : profiles) {
      for (long seed : IntStream.range(0, 60).asLongStream().toArray()) {
        Shop random = RandomShops.shop(profile, seed);
        Machine machine = narrowed(RandomShops.machine(random), seed);
        Vise vise = RandomShops.vise(random);
        Explanation explanation = Advisor.explain(random.settings(), machine, vise);
        Outcome outcome = explanation.advice().outcome();
        List<String> lines =
            ExplanationText.lines(
                new ExplainFacts(
                    PeopleUnit.MM, random.settings(), explanation, List.of(), List.of(), List.of()),
                Integer.MAX_VALUE);
        String input = profile + " " + seed + "\n" + ShopCsv.text(random) + lines;
        boolean isUnknown = outcome.verdict() == Verdict.UNKNOWN;
        assertEquals(
            !isUnknown && !outcome.open().isEmpty(), !line(lines, "That holds").isEmpty(), input);
        Matcher margins = MARGINS.matcher(line(lines, "Best margin from"));
        assertEquals(
            isUnknown
                && outcome.bounds().atWorst().isPresent()
                && outcome.bounds().atBest().isPresent(),
            margins.matches(),
            input);
        if (margins.matches()) {
          unknown++;
          assertIsDown(outcome.bounds().atWorst(), margins.group(1), input);
          assertIsDown(outcome.bounds().atBest(), margins.group(2), input);
        }
        decided += isUnknown || outcome.open().isEmpty() ? 0 : 1;
      }
    }
    assertTrue(unknown > 5 && decided > 5, unknown + " unknown, " + decided + " decided");
  }

  /** Blank gaps become ranges about where things get tight. */
  private static Machine narrowed(Machine machine, long seed) {
    return machine.withEachGuard(
        guard ->
            guard.gap().isOpen()
                ? guard.withGap(range(String.valueOf(seed % 40 - 20), String.valueOf(60 + seed)))
                : guard);
  }

  private static void assertIsDown(OptionalLong margin, String printed, String input) {
    long shown = new BigDecimal(printed).multiply(BigDecimal.valueOf(Length.MM)).longValueExact();
    assertTrue(shown <= margin.getAsLong(), input);
    assertTrue(margin.getAsLong() < shown + Length.MM / 100, input);
  }

  /** A nose and a tool known within bounds once ended in a stack trace. */
  @Test
  void explainJob_noseWithinBounds_printsTheRoomAtWorst() throws Exception {
    Shop jobs = ShopReader.read(GOLDEN.resolve("jobs"), Map.of()).shop().orElseThrow();
    Machine machine = jobs.machines().get(0);
    Machine open = machine.toBuilder().nose(machine.noseMin(), range("455", "457.2")).build();
    Job job = jobs.jobs().get(0);

    List<String> lines =
        JobExplanationText.lines(
            PeopleUnit.MM,
            jobs.settings(),
            JobPairing.explain(jobs.settings(), open, jobs.vises().get(0), job),
            true,
            Integer.MAX_VALUE);

    // 455 − (2 7/8 + 2 + 8) in = 455 − 327.025.
    assertTrue(
        lines.contains(
            "  the longest tool leaves 127.97 over the part with the nose at its highest, at worst;"
                + " 6.35 asked for"),
        () -> String.join("\n", lines));
    assertEquals(
        "That holds whatever nose_max is, from 455 to 457.2 mm.", line(lines, "That holds"));
  }
}
