package org.jawroom.report.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.math.BigInteger;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Random;
import java.util.stream.Stream;
import org.jawroom.checks.Reconciliation;
import org.jawroom.checks.exact.Rational;
import org.jawroom.checks.expected.Expectations;
import org.jawroom.checks.expected.ExpectedGap;
import org.jawroom.checks.expected.Terms;
import org.jawroom.clearance.Situation;
import org.jawroom.clearance.gap.Limit;
import org.jawroom.clearance.gap.MomentGaps;
import org.jawroom.clearance.part.PartRole;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Length;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.reference.random.RandomShops.Profile;
import org.jawroom.report.card.CheckSheet;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.format.Rounding;
import org.jawroom.shop.Check;
import org.jawroom.shop.Settings;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.value.Provenance;
import org.jawroom.shop.vise.Vise;
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
 * Gaps found at the machine on the page, in a real browser, against what {@code reconcile} expects
 * of the same check.
 */
class PageFoundTest {
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
          OpenShops.page(
              lot,
              seed,
              seed % 2 == 0 ? OptionalLong.of(45 * Length.MM) : OptionalLong.empty(),
              Profile.PLAIN,
              Profile.CLUTTERED,
              Profile.OTHER_MOVES,
              Profile.BOTH_JAWS,
              Profile.HANDLED,
              Profile.STRAPPED);
      List<OpenShops.Question> questions = OpenShops.questions(page, lot);
      List<List<String>> expected = new ArrayList<>();
      for (OpenShops.Question asked : questions) {
        Outcome outcome =
            page.outcomes()
                .get(
                    (Integer) asked.state().get("machine") * page.shop().vises().size()
                        + (Integer) asked.state().get("vise"));
        List<List<String>> pairs = new ArrayList<>();
        List<String> ranges = new ArrayList<>();
        for (Limit limit :
            MomentGaps.of(
                    page.shop().settings(),
                    outcome.machine(),
                    outcome.vise().base().bedHeight(),
                    asked.seat().parts())
                .at(asked.moment(), asked.seat().turn(), asked.x(), asked.y())) {
          if (limit.part().role() != PartRole.BOLT) {
            String axis = limit.axis().letter();
            pairs.add(List.of(limit.part().name(), limit.guard().name(), axis));
            ranges.add(expected(page.shop().settings(), outcome, asked, limit));
          }
        }
        asked.state().put("tolerance", 3L);
        asked.state().put("pairs", pairs);
        expected.add(ranges);
        compared += ranges.size();
      }
      browser.open(page.write(folder));
      List<?> found =
          (List<?>)
              browser.run(EXPECTED, questions.stream().map(OpenShops.Question::state).toList());
      for (int i = 0; i < questions.size(); i++) {
        List<?> ranges = (List<?>) found.get(i);
        for (int j = 0; j < ranges.size(); j++) {
          assertEquals(
              expected.get(i).get(j),
              reduced((String) ranges.get(j)),
              "seed " + seed + ": " + questions.get(i).state() + " pair " + j);
        }
      }
    }
    assertTrue(compared > 1000, "only " + compared);
  }

  private static String expected(
      Settings settings, Outcome outcome, OpenShops.Question asked, Limit limit) {
    Machine machine = outcome.machine();
    Vise vise = outcome.vise();
    long half = vise.isTapedFromBase() ? vise.base().width().length() / 2 : 0;
    boolean upright = asked.seat().turn().uAxis() == Axis.Y;
    Check check =
        new Check(
            machine,
            vise,
            asked.seat().turn(),
            asked.x() - (upright ? half : 0) + machine.tableLength() / 2,
            asked.y() - (upright ? 0 : half) + machine.tableWidth() / 2,
            limit.part().name(),
            limit.guard().guard(),
            Check.Opening.of((Long) asked.state().get("opening")),
            asked.moment().situation() == Situation.CUTTING,
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
}
