package org.jawroom.report.card;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.stream.Collectors;
import org.jawroom.clearance.gap.Limit;
import org.jawroom.drawing.file.SvgFile;
import org.jawroom.placement.pairing.Inspection;
import org.jawroom.placement.pairing.Pairing;
import org.jawroom.placement.pairing.SolvedPairing;
import org.jawroom.report.card.measure.Checkpoint;
import org.jawroom.report.card.statement.CardSubject;
import org.jawroom.report.card.statement.Item;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.picture.PairingDrawing;
import org.jawroom.report.wording.place.WhereWords;
import org.jawroom.shop.Shop;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.vise.Swivel;
import org.jawroom.shop.vise.Vise;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What cards of the shop worked by hand say, as whole texts that were read line by line. */
class CardFactsTest {

  @ParameterizedTest
  @CsvSource({
    "fits.txt, roomy, plain, MM",
    "limited.txt, tight, six inch, INCH",
    "measure.txt, exact-taped, six inch, MM",
    "turned.txt, roomy, centred, MM",
  })
  void of_exampleShop_readsAsKept(String kept, String machine, String vise, PeopleUnit unit)
      throws Exception {
    try (var in = getClass().getResourceAsStream("/org/jawroom/card/" + kept)) {
      assertEquals(
          new String(in.readAllBytes(), StandardCharsets.UTF_8), text(facts(machine, vise, unit)));
    }
  }

  @Test
  void of_inchShop_readsAsKept() throws Exception {
    Path folder = Path.of("src/test/resources/org/jawroom/inch");
    CardSubject subject = Explained.one(Explained.shop(folder), "bed mill", "machine vise 6");
    assertEquals(
        Files.readString(folder.resolve("card.txt")),
        text(CardFacts.of(subject, Explained.run(PeopleUnit.INCH))));
  }

  /** The strips of what turns bound its gap on one side alone; the base stands as bolted. */
  @Test
  void checkpoints_ofATurnedVise_areRangesOfTheBaseAlone() throws Exception {
    Shop shop = shop();
    int bounds = 0;
    int ranges = 0;
    for (Machine machine : shop.machines()) {
      for (Vise square : shop.vises()) {
        Vise turned =
            square.turned(
                new Swivel(square.name(), BigDecimal.valueOf(30), 0, OptionalLong.empty()));
        Optional<CardSubject> card = CardSubject.of(shop.settings(), machine, turned, List.of());
        for (Checkpoint row :
            card.map(one -> CardFacts.of(one, Explained.run(PeopleUnit.MM)).checkpoints())
                .orElse(List.of())) {
          boolean stands = row.pair().startsWith("base ") || row.pair().startsWith("bolts ");
          assertEquals(!stands, row.expected().label().endsWith(" or more"), row.toString());
          bounds += stands ? 0 : 1;
          ranges += stands ? 1 : 0;
        }
      }
    }
    assertTrue(bounds > 10 && ranges > 0, bounds + ", " + ranges);
  }

  @Test
  void of_pairingWithoutAPlace_isEmpty() throws Exception {
    assertEquals(Optional.empty(), Explained.hopeless());
  }

  /**
   * Over every card of the shop: the range holds the exact gap, and less than asked is never
   * allowed.
   */
  @Test
  void of_everyPairing_expectationHoldsTheGap() throws Exception {
    int checked = 0;
    for (CardSubject explanation : Explained.all(shop())) {
      for (Checkpoint row : CardFacts.of(explanation, Explained.run(PeopleUnit.MM)).checkpoints()) {
        String[] ends = row.expected().label().split(" to ");
        Limit limit =
            explanation.pairs().stream()
                .filter(pair -> row.pair().equals(WhereWords.pair(pair)))
                .findFirst()
                .orElseThrow();
        double gap = limit.gap() / 2e6;
        double tolerance = limit.tolerance() / 2e6;
        double lo = ends[0].startsWith("0 (") ? 0 : Double.parseDouble(ends[0]);
        assertTrue(lo <= Math.max(0, gap - tolerance) + 1e-9, row + " " + limit);
        assertTrue(Double.parseDouble(ends[1]) >= gap + tolerance - 1e-9, row + " " + limit);
        double stop = Double.parseDouble(row.stop());
        double go = Double.parseDouble(row.go());
        assertTrue(stop >= limit.required() / 2e6 - 1e-9, row + " " + limit);
        assertTrue(go >= stop && go >= gap - tolerance - 1e-9, row + " " + limit);
        checked++;
      }
    }
    assertTrue(checked > 20, "checked " + checked);
  }

  /** The tightest of all pairs is among the rows, no place is there twice, handles come last. */
  @Test
  void checkpoints_everyPairing_areTheTightestInOrder() throws Exception {
    for (CardSubject explanation : Explained.all(shop())) {
      List<Checkpoint> rows = CardFacts.of(explanation, Explained.run(PeopleUnit.MM)).checkpoints();
      List<String> pairs = rows.stream().map(Checkpoint::pair).toList();
      assertTrue(rows.size() <= 5);
      if (explanation.pairs().isEmpty()) {
        assertTrue(rows.isEmpty());
        continue;
      }
      Limit tightest = explanation.pairs().get(0);
      assertTrue(pairs.contains(WhereWords.pair(tightest)), pairs.toString());
      boolean handle = false;
      for (String pair : pairs) {
        assertFalse(handle && !pair.startsWith("handle"), pairs.toString());
        handle = pair.startsWith("handle");
      }
    }
  }

  /** Of a row each pair is checked at the vise where it is tightest, and all are drawn. */
  @Test
  void row_pairs_areTheTightestOfAllItsVises() throws Exception {
    Shop shop = Explained.shop(Path.of("inputs/demo"));
    SolvedPairing solved =
        Pairing.solved(
            shop.settings(),
            Explained.machine(shop, "middle closed mill"),
            Explained.vise(shop, "six inch"));
    CardSubject row = CardSubject.ofRow(shop.settings(), solved, 3, List.of());
    Map<String, Long> least = new HashMap<>();
    for (Inspection one : solved.inspections(solved.sideBySide(), solved.sideBySide().places())) {
      one.pairs().forEach(limit -> least.merge(key(limit), limit.margin(), Math::min));
    }
    assertEquals(
        least, row.pairs().stream().collect(Collectors.toMap(CardFactsTest::key, Limit::margin)));
    assertTrue(least.values().stream().allMatch(margin -> margin >= 0), least::toString);
    assertEquals(row.place().limit().orElseThrow().margin(), row.pairs().get(0).margin());
    String drawn =
        new String(
            SvgFile.of(
                PairingDrawing.bare(
                    PeopleUnit.MM,
                    shop.settings(),
                    row.placed(),
                    row.layout(),
                    List.of("left", "front"),
                    row.row().orElseThrow().beside(),
                    258,
                    205)),
            StandardCharsets.UTF_8);
    assertTrue(drawn.contains("vise-2-part-1") && drawn.contains("vise-3-bolt-2"), drawn);
    assertFalse(drawn.contains("vise-4"), drawn);
  }

  private static String key(Limit limit) {
    return WhereWords.pair(limit) + ", " + limit.situation();
  }

  /** With a handle that stays on: off first, so its own gaps last; cutting before loading. */
  @Test
  void checkpoints_handleThatStaysOn_comesLast() throws Exception {
    CardSubject explanation =
        Explained.one(
            Explained.shop(Path.of("inputs/demo"), Map.of("shortest_tool", "150 mm")),
            "bridge mill",
            "production 200");
    assertEquals(
        List.of(
            "fixed jaw to head",
            "moving jaw to head",
            "base to head",
            "handle to head",
            "handle to table"),
        CardFacts.of(explanation, Explained.run(PeopleUnit.MM)).checkpoints().stream()
            .map(Checkpoint::pair)
            .toList());
  }

  private static Shop shop() throws Exception {
    return Explained.shop(Explained.golden("example"));
  }

  private static CardFacts facts(String machine, String vise, PeopleUnit unit) throws Exception {
    return CardFacts.of(Explained.one(shop(), machine, vise), Explained.run(unit));
  }

  private static String text(CardFacts facts) {
    StringBuilder text = new StringBuilder();
    text.append(facts.vise())
        .append(" on ")
        .append(facts.machine())
        .append(": ")
        .append(facts.stamp())
        .append(", lengths in ")
        .append(facts.unit())
        .append('\n');
    section(text, "alarms", facts.alarms());
    section(
        text,
        "tape",
        facts.tape().stream()
            .map(
                range ->
                    range.what()
                        + " "
                        + range.best()
                        + " "
                        + range.from()
                        + range.range().map(may -> ": " + may).orElse(""))
            .toList());
    section(text, "placing", items(facts.placing()));
    section(text, "bolts", items(facts.bolts()));
    section(text, "tapping", items(facts.tapping()));
    section(text, "part", items(facts.part()));
    section(text, "limits", items(facts.limits()));
    section(
        text,
        "checkpoints",
        facts.checkpoints().stream()
            .map(
                row ->
                    row.pair()
                        + ": "
                        + row.where()
                        + " | "
                        + item(row.expected())
                        + " | "
                        + row.gauge()
                        + " | "
                        + "stop below "
                        + row.stop()
                        + ", go from "
                        + row.go())
            .toList());
    section(text, "steps", facts.steps());
    section(text, "cautions", facts.cautions());
    section(text, "origin", items(facts.origin()));
    return text.toString();
  }

  private static void section(StringBuilder text, String name, List<String> lines) {
    text.append(name)
        .append('\n')
        .append(lines.stream().map(line -> " " + " " + line + "\n").collect(Collectors.joining()));
  }

  private static List<String> items(List<Item> items) {
    return items.stream().map(CardFactsTest::item).toList();
  }

  private static String item(Item item) {
    return (item.label() + " " + item.text()).strip();
  }
}
