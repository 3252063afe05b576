package org.jawroom.report.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jawroom.clearance.Blanks;
import org.jawroom.clearance.Certainty;
import org.jawroom.clearance.Setup;
import org.jawroom.clearance.gap.Limit;
import org.jawroom.clearance.gap.MarginField;
import org.jawroom.clearance.gap.MomentGaps;
import org.jawroom.clearance.gap.Pair;
import org.jawroom.clearance.guard.MachineGuards;
import org.jawroom.geometry.Length;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.reference.random.RandomShops.Profile;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.format.Rounding;
import org.jawroom.shop.OpenReading;
import org.jawroom.shop.Settings;
import org.jawroom.shop.value.Column;
import org.jawroom.shop.value.Dimension;
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

  @Test
  void gaps_withValuesSupposed_areThoseOfTheReadingsFilledIn() throws Exception {
    int compared = 0;
    Set<String> met = new TreeSet<>();
    for (long seed = 0; seed < 12; seed++) {
      Random lot = new Random(seed);
      ShopPage page =
          OpenShops.page(
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
      List<OpenShops.Question> questions = OpenShops.questions(page, lot);
      browser.open(page.write(folder));
      List<?> found =
          (List<?>)
              browser.run(SUPPOSED, questions.stream().map(OpenShops.Question::state).toList());
      for (int i = 0; i < questions.size(); i++) {
        OpenShops.Question asked = questions.get(i);
        String where = "seed " + seed + ": " + asked.state();
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
            OpenShops.BODY.stream(),
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

  private static void names(OpenShops.Question asked, String whose, Set<String> met) {
    ((Map<?, ?>) asked.state().get(whose)).keySet().forEach(name -> met.add((String) name));
  }

  private static String moment(Settings settings, OpenShops.Question asked) {
    return listed(
        MomentGaps.of(
                settings.toBuilder().handRoom(0).build(),
                asked.machine(),
                asked.vise().base().bedHeight(),
                asked.parts(settings))
            .at(asked.moment(), asked.seat().turn(), asked.x(), asked.y()));
  }

  private static String swept(Settings settings, OpenShops.Question asked) {
    MachineGuards guards =
        MachineGuards.of(
            settings,
            asked.machine(),
            Setup.PLAIN,
            asked.vise().base().bedHeight(),
            Certainty.AT_WORST,
            new Blanks());
    return listed(
        MarginField.of(
                Pair.all(0, asked.parts(settings), guards.swept()),
                asked.seat().turn(),
                asked.vise().opening())
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
