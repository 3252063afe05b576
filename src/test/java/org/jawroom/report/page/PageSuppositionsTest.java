package org.jawroom.report.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.math.BigInteger;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jawroom.checks.Reconciliation;
import org.jawroom.checks.exact.Rational;
import org.jawroom.checks.expected.Expectations;
import org.jawroom.checks.expected.ExpectedGap;
import org.jawroom.checks.expected.Terms;
import org.jawroom.clearance.Blanks;
import org.jawroom.clearance.Certainty;
import org.jawroom.clearance.Setup;
import org.jawroom.clearance.Situation;
import org.jawroom.clearance.gap.Limit;
import org.jawroom.clearance.gap.MachineState;
import org.jawroom.clearance.gap.MarginField;
import org.jawroom.clearance.gap.MomentGaps;
import org.jawroom.clearance.gap.Pair;
import org.jawroom.clearance.guard.MachineGuards;
import org.jawroom.clearance.part.ClampParts;
import org.jawroom.clearance.part.Part;
import org.jawroom.clearance.part.PartRole;
import org.jawroom.clearance.part.ViseParts;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Length;
import org.jawroom.geometry.Rectangle;
import org.jawroom.placement.pairing.Model;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.search.Bolted;
import org.jawroom.reference.RandomShops;
import org.jawroom.reference.RandomShops.Profile;
import org.jawroom.reference.SettingsDraft;
import org.jawroom.report.card.CheckSheet;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.format.Rounding;
import org.jawroom.shop.Check;
import org.jawroom.shop.OpenReading;
import org.jawroom.shop.Settings;
import org.jawroom.shop.Shop;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.machine.Side;
import org.jawroom.shop.value.Column;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.value.Provenance;
import org.jawroom.shop.vise.Vise;
import org.jawroom.shop.vise.ViseReadings;
import org.jawroom.tables.Reading;
import org.jawroom.tables.ShopReader;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;

/**
 * Values supposed on the page, in a real browser, against the solver on the shop with these
 * readings filled in: equal to the half-nanometre.
 */
class PageSuppositionsTest {
  private static final String SUPPOSED =
      "const data = JSON.parse(document.getElementById('data').textContent);"
          + "const listed = (gaps) => gaps.map((gap) => [gap.guard.name, gap.part.name, gap.gap,"
          + " gap.margin, gap.axis].join('|')).join('\\n');"
          + "return arguments[0].map((state) => {"
          + "const machine = Suppose.machine(data.far, data.machines[state.machine], state.ofMachine);"
          + "const vise = Suppose.vise(data.far, data.vises[state.vise], state.ofVise);"
          + "return [listed(Model.gaps(data, machine, vise, state)),"
          + " listed(Model.sweptGaps(data, machine, vise, state, vise.opening))]; });";

  private static final List<Column> BODY =
      EnumSet.range(Column.BASE_WIDTH, Column.HANDLE_DEPTH).stream().toList();

  private static Browser browser;

  @TempDir private Path folder;

  @BeforeAll
  static void start() throws IOException {
    browser = Browser.start().orElse(null);
  }

  @BeforeEach
  void needsABrowser() {
    Browser.assumeThere();
  }

  @AfterAll
  static void stop() throws IOException {
    if (browser != null) {
      browser.close();
    }
  }

  /** Opens some readings, most of them by little so that a place remains. */
  private static Dimension opened(Random lot, Dimension known, boolean gap) {
    if (!known.isKnown() || lot.nextInt(3) > 0) {
      return known;
    }
    long value = known.length();
    long below = 2 * Length.NANOMETRE * lot.nextInt(lot.nextBoolean() ? 3 : 1_000_000);
    long above = 2 * Length.NANOMETRE * lot.nextInt(lot.nextBoolean() ? 3 : 1_000_000);
    long least = gap ? value - below : Math.max(0, value - below);
    return switch (lot.nextInt(6)) {
      case 0 -> gap ? Dimension.within(least, Length.ENDLESS) : Dimension.within(0, value + above);
      default -> Dimension.within(least, value + above);
    };
  }

  private static Machine opened(Random lot, Machine machine) {
    Machine open =
        machine.withEachGuard(
            guard ->
                guard.side().isPresent() ? guard.withGap(opened(lot, guard.gap(), true)) : guard);
    return open.toBuilder()
        .nose(opened(lot, machine.noseMin(), false), opened(lot, machine.noseMax(), false))
        .build();
  }

  private static Vise opened(Random lot, Vise vise) {
    Vise open = vise;
    if (vise.simple()) {
      for (Column column : BODY) {
        open = ViseReadings.with(open, column, opened(lot, ViseReadings.of(open, column), false));
      }
    }
    return open;
  }

  /** Machines and vises of random shops, each against each. */
  private static ShopPage page(Random lot, long seed, OptionalLong tool, Profile... profiles) {
    List<Machine> machines = new ArrayList<>();
    List<Vise> vises = new ArrayList<>();
    for (Profile profile : profiles) {
      Shop one = RandomShops.shop(profile, seed);
      one.machines().forEach(machine -> machines.add(opened(lot, machine)));
      one.vises().forEach(vise -> vises.add(opened(lot, vise)));
    }
    SettingsDraft draft = SettingsDraft.of(Settings.DEFAULTS);
    draft.shortestTool = tool;
    return ShopPage.of(new Shop(draft.build(), machines, vises, List.of()));
  }

  /** One question to the page, and the pairing with the supposed readings filled in. */
  private record Question(
      Map<String, Object> state, Machine machine, Vise vise, Bolted seat, MachineState moment) {

    long x() {
      return (Long) state.get("x");
    }

    long y() {
      return (Long) state.get("y");
    }

    /** The parts at worst of what is still open, and what holds the vise. */
    List<Part> parts(Settings settings) {
      List<Part> parts = new ArrayList<>(ViseParts.of(vise, Certainty.AT_WORST, new Blanks()));
      boolean clamped = seat.parts().stream().anyMatch(part -> part.role() == PartRole.CLAMP);
      parts.addAll(
          clamped
              ? ClampParts.of(vise, settings.clampRoom(), Certainty.AT_WORST)
              : seat.parts().stream().filter(part -> part.role() == PartRole.BOLT).toList());
      return parts;
    }
  }

  @Test
  void gaps_withValuesSupposed_areThoseOfTheReadingsFilledIn() throws Exception {
    int compared = 0;
    Set<String> met = new TreeSet<>();
    for (long seed = 0; seed < 12; seed++) {
      Random lot = new Random(seed);
      ShopPage page =
          page(
              lot,
              seed,
              seed % 2 == 0 ? OptionalLong.of(45 * Length.MM) : OptionalLong.empty(),
              Profile.PLAIN,
              Profile.CLUTTERED,
              Profile.OTHER_MOVES,
              Profile.INCH,
              Profile.BOTH_JAWS,
              Profile.HANDLED,
              Profile.STRAPPED,
              Profile.ONE_OPENING,
              Profile.SLOTS_ALONG_Y);
      List<Question> questions = questions(page, lot);
      browser.open(page.write(folder));
      List<?> found =
          (List<?>) browser.run(SUPPOSED, questions.stream().map(Question::state).toList());
      for (int i = 0; i < questions.size(); i++) {
        Question asked = questions.get(i);
        String where = "seed " + seed + ": " + asked.state;
        List<?> answer = (List<?>) found.get(i);
        assertEquals(moment(page.shop().settings(), asked), answer.get(0), where);
        assertEquals(
            sorted(swept(page.shop().settings(), asked)), sorted((String) answer.get(1)), where);
        names(asked, "ofMachine", met);
        names(asked, "ofVise", met);
        compared++;
      }
    }
    assertTrue(compared > 200, "only " + compared);
    // Every reading of a vise's body, the nose, gaps of machines and of rows.
    Stream.concat(
            BODY.stream(),
            Stream.of(
                Column.FRONT_GAP,
                Column.REAR_GAP,
                Column.LEFT_GAP,
                Column.RIGHT_GAP,
                Column.NOSE_MIN,
                Column.NOSE_MAX))
        .forEach(column -> assertTrue(met.contains(column.column()), column + " of " + met));
    assertTrue(met.stream().anyMatch(name -> name.startsWith("gap (")), met.toString());
  }

  private static final String EXPECTED =
      "const data = JSON.parse(document.getElementById('data').textContent);"
          + "return arguments[0].map((state) => {"
          + "const machine = data.machines[state.machine]; const vise = data.vises[state.vise];"
          + "return state.pairs.map(([part, guard, axis]) => {"
          + "const named = Model.partsOf(vise, state).filter((one) => one.name === part"
          + " && Model.counts(one, state.situation));"
          + "const range = Found.expected(data, machine, vise, named,"
          + " machine.guards.find((one) => one.name === guard), state, axis, state.tolerance);"
          + "return range === null ? '' : [range.least, range.most, range.over].join(' '); }); });";

  @Test
  void gapsFound_areExpectedAsReconcileExpectsThem() throws Exception {
    int compared = 0;
    for (long seed = 20; seed < 28; seed++) {
      Random lot = new Random(seed);
      ShopPage page =
          page(
              lot,
              seed,
              seed % 2 == 0 ? OptionalLong.of(45 * Length.MM) : OptionalLong.empty(),
              Profile.PLAIN,
              Profile.CLUTTERED,
              Profile.OTHER_MOVES,
              Profile.BOTH_JAWS,
              Profile.HANDLED,
              Profile.STRAPPED);
      List<Question> questions = questions(page, lot);
      List<List<String>> expected = new ArrayList<>();
      for (Question asked : questions) {
        Outcome outcome =
            page.outcomes()
                .get(
                    (Integer) asked.state.get("machine") * page.shop().vises().size()
                        + (Integer) asked.state.get("vise"));
        List<List<String>> pairs = new ArrayList<>();
        List<String> ranges = new ArrayList<>();
        for (Limit limit :
            MomentGaps.of(
                    page.shop().settings(),
                    outcome.machine(),
                    outcome.vise().base().bedHeight(),
                    asked.seat.parts())
                .at(asked.moment, asked.seat.turn(), asked.x(), asked.y())) {
          if (limit.part().role() != PartRole.BOLT) {
            String axis = limit.axis().letter();
            pairs.add(List.of(limit.part().name(), limit.guard().name(), axis));
            ranges.add(expected(page.shop().settings(), outcome, asked, limit));
          }
        }
        asked.state.put("tolerance", 3L);
        asked.state.put("pairs", pairs);
        expected.add(ranges);
        compared += ranges.size();
      }
      browser.open(page.write(folder));
      List<?> found =
          (List<?>) browser.run(EXPECTED, questions.stream().map(Question::state).toList());
      for (int i = 0; i < questions.size(); i++) {
        List<?> ranges = (List<?>) found.get(i);
        for (int j = 0; j < ranges.size(); j++) {
          assertEquals(
              expected.get(i).get(j),
              reduced((String) ranges.get(j)),
              "seed " + seed + ": " + questions.get(i).state + " pair " + j);
        }
      }
    }
    assertTrue(compared > 1000, "only " + compared);
  }

  private static String expected(Settings settings, Outcome outcome, Question asked, Limit limit) {
    Machine machine = outcome.machine();
    Vise vise = outcome.vise();
    long half = vise.isTapedFromBase() ? vise.base().width().length() / 2 : 0;
    boolean upright = asked.seat.turn().uAxis() == Axis.Y;
    Check check =
        new Check(
            machine,
            vise,
            asked.seat.turn(),
            asked.x() - (upright ? half : 0) + machine.tableLength() / 2,
            asked.y() - (upright ? 0 : half) + machine.tableWidth() / 2,
            limit.part().name(),
            limit.guard().guard(),
            Check.Opening.of((Long) asked.state.get("opening")),
            asked.moment.situation() == Situation.CUTTING,
            Optional.of(limit.axis()),
            0,
            new Provenance(3, false, "", ""));
    return new Expectations(settings, new Terms())
        .of(check)
        .map(gap -> gap.range().lo() + " " + gap.range().hi())
        .orElse("");
  }

  /** As the solver prints a range: both ends reduced. */
  private static String reduced(String range) {
    if (range.isEmpty()) {
      return "";
    }
    String[] parts = range.split(" ", -1);
    return end(parts[0], parts[2]) + " " + end(parts[1], parts[2]);
  }

  private static Optional<Rational> end(String numerator, String over) {
    return numerator.isEmpty()
        ? Optional.empty()
        : Optional.of(new Rational(new BigInteger(numerator), new BigInteger(over)));
  }

  @Test
  void field_takesAValueWithinItsRange_andSaysItIsNoVerdict() throws Exception {
    ShopPage page = ShopPage.demo();
    browser.size(1280, 900);
    browser.open(page.write(folder));
    int index = drawnWithARange(page);
    browser.run(
        "location.hash = arguments[0]",
        "#"
            + (index / page.shop().vises().size() + 1)
            + "/"
            + (index % page.shop().vises().size() + 1));
    browser.until("the pairing open", "!document.getElementById('pairing').hidden");
    browser.settled();
    String rest = browser.text("here");
    assertEquals(
        "at worst", browser.find(By.cssSelector("#suppose output")).getDomProperty("textContent"));
    browser.find(By.cssSelector("#suppose summary")).click();
    WebElement field = browser.find(By.cssSelector("#suppose .length input"));
    OpenReading reading = reading(page.outcomes().get(index));
    String best = PeopleUnit.MM.text(reading.value().values(0).hi(), Rounding.DOWN);
    field.sendKeys(best, Keys.ENTER);
    browser.settled();
    String supposing = "Supposing " + reading.measurand().reading() + " is " + best;
    assertTrue(browser.text("now").startsWith(supposing), browser.text("now"));
    assertTrue(browser.text("now").contains("no verdict"), browser.text("now"));
    assertTrue(browser.text("here").startsWith(supposing), browser.text("here"));
    field.clear();
    field.sendKeys("90000", Keys.TAB);
    assertTrue(
        browser.find(By.cssSelector("#suppose .fault")).getText().startsWith("Not within "),
        browser.text("suppose"));
    field.clear();
    field.sendKeys("1,250", Keys.TAB);
    assertTrue(
        browser.find(By.cssSelector("#suppose .fault")).getText().startsWith("Write a number"),
        browser.text("suppose"));
    browser.byId("suppose-nothing").click();
    browser.settled();
    assertEquals(rest, browser.text("here"));
    assertEquals("", field.getDomProperty("value"));
    assertEquals(List.of(), browser.console());
  }

  @Test
  void found_isCheckedAndCopiedAsRowsThatReconcileReads() throws Exception {
    ShopPage page = ShopPage.demo();
    browser.size(1280, 900);
    browser.open(page.write(folder));
    browser.run("location.hash = '#1/1'");
    browser.until("the pairing open", "!document.getElementById('pairing').hidden");
    browser.settled();
    browser.find(By.cssSelector("#found summary")).click();
    browser.byId("found-0").sendKeys("1", Keys.TAB);
    browser.byId("found-1").sendKeys("9000", Keys.TAB);
    browser.byId("off-1").sendKeys("0.5", Keys.TAB);
    browser.settled();
    List<WebElement> says = browser.driver().findElements(By.cssSelector("#found .says"));
    assertTrue(says.get(0).getText().startsWith("STOP: "), says.get(0).getText());
    assertTrue(says.get(1).getText().startsWith("farther by "), says.get(1).getText());
    Path tables = Files.createDirectory(folder.resolve("tables"));
    try (Stream<Path> files = Files.list(Path.of("inputs", "demo"))) {
      for (Path file : files.filter(one -> one.toString().endsWith(".csv")).toList()) {
        Files.copy(file, tables.resolve(file.getFileName()));
      }
    }
    String csv = browser.byId("checks-csv").getDomProperty("value");
    assertEquals(String.join(",", CheckSheet.HEADER), csv.lines().findFirst().orElseThrow());
    Files.writeString(tables.resolve("checks.csv"), csv);
    Reading reading = ShopReader.read(tables, Map.of());
    assertEquals(List.of(), reading.faults());
    List<Reconciliation.Result> results = Reconciliation.of(reading.shop().orElseThrow()).checks();
    assertEquals(2, results.size());
    for (int i = 0; i < results.size(); i++) {
      ExpectedGap gap = results.get(i).expected().orElseThrow();
      String by = PeopleUnit.MM.text(gap.outside().orElseThrow().ceiling(), Rounding.UP);
      assertTrue(says.get(i).getText().contains(gap.says().code() + " by "), csv);
      double shown = Double.parseDouble(says.get(i).getText().replaceAll(".* by (.*) mm", "$1"));
      assertEquals(Double.parseDouble(by), shown, csv);
    }
    assertEquals(List.of(), browser.console());
  }

  private static int drawnWithARange(ShopPage page) {
    for (int i = 0; i < page.pairings().size(); i++) {
      if (!page.pairings().get(i).fastened().isEmpty()
          && page.outcomes().get(i).openReadings().size() == 1
          && reading(page.outcomes().get(i)).value().state() == Dimension.State.WITHIN) {
        return i;
      }
    }
    throw new AssertionError("no pairing of the demo shows a range");
  }

  private static OpenReading reading(Outcome outcome) {
    return outcome.openReadings().get(0);
  }

  private static void names(Question asked, String whose, Set<String> met) {
    ((Map<?, ?>) asked.state.get(whose)).keySet().forEach(name -> met.add((String) name));
  }

  private static List<Question> questions(ShopPage page, Random lot) {
    List<Question> questions = new ArrayList<>();
    for (int i = 0; i < page.pairings().size(); i++) {
      Outcome outcome = page.outcomes().get(i);
      if (!page.pairings().get(i).fastened().isEmpty()) {
        questions.add(question(page, i, outcome, lot));
      }
    }
    return questions;
  }

  private static Question question(ShopPage page, int index, Outcome outcome, Random lot) {
    Machine machine = outcome.machine();
    Vise vise = outcome.vise();
    Map<String, Long> ofMachine = new LinkedHashMap<>();
    Map<String, Long> ofVise = new LinkedHashMap<>();
    for (OpenReading reading : outcome.openReadings()) {
      long value = value(lot, reading.value().values(-100 * Length.MM));
      if (reading.column().compareTo(Column.BOLT_SPACING) >= 0
          || vise.opening().length() == 0 && reading.column().name().contains("PROJECTION")
          || lot.nextInt(3) == 0) {
        continue;
      }
      Dimension known = Dimension.of(value);
      if (reading.isOfMachine()) {
        ofMachine.put(reading.measurand().reading(), value);
        machine = filled(machine, reading, known);
      } else {
        ofVise.put(reading.measurand().reading(), value);
        vise = ViseReadings.with(vise, reading.column(), known);
      }
    }
    List<Bolted> seats =
        Model.of(page.shop().settings(), outcome.machine(), outcome.vise(), Setup.PLAIN).bolted();
    Bolted seat = seats.get(lot.nextInt(seats.size()));
    Rectangle places = seat.places().get(lot.nextInt(seat.places().size()));
    long opening = within(lot, vise.opening());
    MachineState moment =
        lot.nextBoolean()
            ? MachineState.cutting(
                within(lot, Interval.around(machine.spindleX(), machine.reachX())),
                within(lot, Interval.around(machine.spindleY(), machine.reachY())),
                opening)
            : MachineState.loading(machine, opening);
    Map<String, Object> state = new HashMap<>();
    state.put("machine", index / page.shop().vises().size());
    state.put("vise", index % page.shop().vises().size());
    state.put("turn", seat.turn().word());
    state.put("mount", seat.fastening().index());
    state.put("thread", seat.fastening().anchors().orElseThrow().nutRoom());
    state.put("x", within(lot, places.x()));
    state.put("y", within(lot, places.y()));
    state.put("situation", moment.situation() == Situation.CUTTING ? 1 : 2);
    state.put("spindleX", moment.spindleX());
    state.put("spindleY", moment.spindleY());
    state.put("opening", opening);
    state.put("hand", 0L);
    state.put("ofMachine", ofMachine);
    state.put("ofVise", ofVise);
    return new Question(state, machine, vise, seat, moment);
  }

  private static Machine filled(Machine machine, OpenReading reading, Dimension known) {
    return switch (reading.column()) {
      case NOSE_MIN -> machine.toBuilder().nose(known, machine.noseMax()).build();
      case NOSE_MAX -> machine.toBuilder().nose(machine.noseMin(), known).build();
      case GUARD_GAP ->
          machine.withEachGuard(
              guard ->
                  guard.isRow() && guard.name().equals(reading.measurand().item())
                      ? guard.withGap(known)
                      : guard);
      default -> machine.withGap(Side.valueOf(reading.column().name().replace("_GAP", "")), known);
    };
  }

  /** A whole nanometre of an interval, as readings are; its ends now and then. */
  private static long value(Random lot, Interval values) {
    Interval ended = Interval.of(values.lo(), Math.min(values.hi(), values.lo() + 500 * Length.MM));
    return within(lot, Interval.of(ended.lo() / 2, ended.hi() / 2)) * 2;
  }

  private static long within(Random lot, Interval interval) {
    return switch (lot.nextInt(6)) {
      case 0 -> interval.lo();
      case 1 -> interval.hi();
      default -> interval.lo() + (long) (lot.nextDouble() * interval.length());
    };
  }

  private static String moment(Settings settings, Question asked) {
    return listed(
        MomentGaps.of(
                settings.toBuilder().handRoom(0).build(),
                asked.machine,
                asked.vise.base().bedHeight(),
                asked.parts(settings))
            .at(asked.moment, asked.seat.turn(), asked.x(), asked.y()));
  }

  private static String swept(Settings settings, Question asked) {
    MachineGuards guards =
        MachineGuards.of(
            settings,
            asked.machine,
            Setup.PLAIN,
            asked.vise.base().bedHeight(),
            Certainty.AT_WORST,
            new Blanks());
    return listed(
        MarginField.of(
                Pair.all(0, asked.parts(settings), guards.swept()),
                asked.seat.turn(),
                asked.vise.opening())
            .limits(asked.x(), asked.y()));
  }

  private static List<String> sorted(String lines) {
    return lines.lines().sorted().toList();
  }

  private static String listed(List<Limit> limits) {
    return limits.stream()
        .map(
            limit ->
                String.join(
                    "|",
                    limit.guard().name(),
                    limit.part().name(),
                    String.valueOf(limit.gap()),
                    String.valueOf(limit.margin()),
                    limit.axis().letter()))
        .collect(Collectors.joining("\n"));
  }
}
