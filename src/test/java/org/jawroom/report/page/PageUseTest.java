package org.jawroom.report.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.jawroom.geometry.Length;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.format.Rounding;
import org.jawroom.report.wording.PairingWords;
import org.jawroom.shop.Shop;
import org.jawroom.shop.Standing;
import org.jawroom.shop.TapedPlace;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.vise.Vise;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.interactions.Actions;
import org.openqa.selenium.interactions.PointerInput;
import org.openqa.selenium.interactions.Sequence;

/** Every control of the demo shop's page, used in a real browser; the console stays silent. */
class PageUseTest {
  @TempDir private static Path folder;

  private static Browser browser;
  private static ShopPage page;
  private static Path file;

  @BeforeAll
  static void start() throws Exception {
    browser = Browser.start().orElse(null);
    page = ShopPage.demo();
    file = page.write(folder);
  }

  @AfterAll
  static void stop() throws IOException {
    if (browser != null) {
      browser.close();
    }
  }

  @BeforeEach
  void openAnew() {
    Browser.assumeThere();
    browser.size(1280, 900);
    browser.scheme("light");
    browser.open(file);
  }

  private static void quiet() {
    assertEquals(List.of(), browser.console());
  }

  private static long count(String selector) {
    return browser.driver().findElements(By.cssSelector(selector)).size();
  }

  private static void go(String machine, String vise) throws InterruptedException {
    List<String> machines = page.shop().machines().stream().map(m -> m.name()).toList();
    List<String> vises = page.shop().vises().stream().map(v -> v.name()).toList();
    browser.run(
        "location.hash = arguments[0]",
        "#" + (machines.indexOf(machine) + 1) + "/" + (vises.indexOf(vise) + 1));
    browser.until("the pairing open", "!document.getElementById('pairing').hidden");
    browser.settled();
  }

  private static Map<?, ?> shown() {
    browser.settled();
    return (Map<?, ?>) browser.run("return Pairing.shown()");
  }

  private static void choose(String id, String value) {
    browser.find(By.cssSelector("#" + id + " option[value='" + value + "']")).click();
    browser.settled();
  }

  private static void key(String id, Keys... keys) {
    browser.byId(id).sendKeys(keys);
    browser.settled();
  }

  @Test
  void matrix_cellsAndKey_countWhatTheOutcomesAre() {
    Map<String, Long> expected =
        page.outcomes().stream()
            .collect(Collectors.groupingBy(PairingWords::finding, Collectors.counting()));
    expected.forEach(
        (finding, number) -> {
          assertEquals(number, count("#matrix .cell.f-" + finding), finding);
          assertEquals(
              String.valueOf(number),
              browser
                  .find(By.cssSelector("#key [data-finding=" + finding + "]"))
                  .getDomAttribute("data-count"));
        });
    assertEquals(page.outcomes().size(), count("#matrix .cell"));
    assertEquals(
        "plain 125 on knee mill: fits, but mind: base"
            + " overhangs the table by 80, more than a quarter of it; no room to tap it square,"
            + " margin 28.5 mm",
        label("knee mill", "plain 125"));
    quiet();
  }

  private static String label(String machine, String vise) {
    return browser
        .find(By.cssSelector("#matrix [aria-label^='" + vise + " on " + machine + ":']"))
        .getDomAttribute("aria-label");
  }

  @Test
  void matrix_extraClearance_greysWhatHasLess() {
    long least = 5_500_000L * 2;
    long staying =
        page.outcomes().stream()
            .filter(outcome -> PairingWords.margin(outcome).orElse(-1) >= least)
            .count();
    long shorter =
        page.outcomes().stream()
                .filter(outcome -> PairingWords.margin(outcome).orElse(-1) >= 0)
                .count()
            - staying;
    for (int press = 0; press < 11; press++) {
      browser.find(By.cssSelector("[aria-label='Extra clearance wanted: more']")).click();
    }
    assertEquals("5.5 mm", browser.find(By.cssSelector("#extra output")).getText());
    assertEquals(shorter, count("#matrix .cell.short"));
    assertTrue(browser.text("shown").contains(staying + " have a margin of 5.5 mm or more"));
    assertTrue(
        label("small closed mill", "plain 125").endsWith("less than the extra clearance wanted"));
    browser.byId("extra-wanted").sendKeys(Keys.HOME);
    assertEquals(0, count("#matrix .cell.short"));
    quiet();
  }

  @Test
  void matrix_search_narrowsMachinesAndVisesAndSaysSo() {
    WebElement search = browser.byId("search");
    search.sendKeys("knee plain");
    assertEquals(2 * 4, count("#matrix .cell"));
    assertTrue(
        browser.text("shown").startsWith("Shown: 2 of 12 machines, 4 of 16 vises, 8 pairings."));
    search.sendKeys(" zzz");
    assertEquals(0, count("#matrix .cell"));
    assertEquals("Nothing is named “zzz”.", browser.text("shown"));
    search.clear();
    search.sendKeys(" ");
    assertEquals(12 * 16, count("#matrix .cell"));
    quiet();
  }

  @Test
  void matrix_sorted_byNameAndByNumberThatFit() {
    choose("sort-machines", "name");
    assertEquals("bench mill", heads("tbody").get(0));
    assertEquals("bridge mill", heads("tbody").get(1));
    choose("sort-vises", "fits");
    List<Long> fitting =
        heads("thead").stream()
            .map(
                vise ->
                    page.outcomes().stream()
                        .filter(outcome -> outcome.vise().name().equals(vise))
                        .filter(outcome -> outcome.verdict().code().equals("fits"))
                        .count())
            .toList();
    assertEquals(fitting.stream().sorted((a, b) -> Long.compare(b, a)).toList(), fitting);
    choose("sort-machines", "input");
    assertEquals("knee mill", heads("tbody").get(1));
    quiet();
  }

  private static List<String> heads(String part) {
    return browser.driver().findElements(By.cssSelector("#matrix " + part + " th bdi")).stream()
        .map(WebElement::getText)
        .toList();
  }

  @Test
  void matrix_keys_moveOpenAndComeBack() throws InterruptedException {
    browser.find(By.cssSelector("#matrix button[tabindex='0']")).sendKeys(Keys.ARROW_DOWN);
    active().sendKeys(Keys.ARROW_RIGHT);
    assertTrue(active().getDomAttribute("aria-label").startsWith("plain 125 on knee mill"));
    assertEquals(1, count("#matrix button[tabindex='0']"));
    active().sendKeys(Keys.END);
    active().sendKeys(Keys.HOME);
    active().sendKeys(Keys.ARROW_RIGHT);
    active().sendKeys(Keys.ENTER);
    browser.until("the pairing open", "!document.getElementById('pairing').hidden");
    assertEquals("plain 125 on knee mill", browser.text("pairing-title"));
    assertEquals("pairing-title", active().getDomAttribute("id"));
    active().sendKeys(Keys.ESCAPE);
    browser.until("the matrix back", "!document.getElementById('overview').hidden");
    assertTrue(active().getDomAttribute("aria-label").startsWith("plain 125 on knee mill"));
    quiet();
  }

  private static WebElement active() {
    return browser.driver().switchTo().activeElement();
  }

  @Test
  void pairing_opened_showsTheTightestMomentAsTheMatrixHasIt() throws InterruptedException {
    go("small closed mill", "plain 125");
    assertTrue(
        browser.text("now").startsWith("Now: just clear, margin 0.50 mm"), browser.text("now"));
    assertTrue(browser.text("here").contains("margin 0.50 mm"), browser.text("here"));
    assertEquals(8, count("#gaps tbody tr"));
    assertTrue(count("#plan .dim.s-just") + count("#side .dim.s-just") > 0);
    quiet();
  }

  @Test
  void pairing_slidersAndButtons_moveJawsAndSpindle() throws InterruptedException {
    go("middle closed mill", "plain 125");
    key("opening", Keys.END);
    assertEquals(250_000_000L, shown().get("opening"));
    browser.find(By.cssSelector("[aria-label='Jaws open: less']")).click();
    assertEquals(248_000_000L, shown().get("opening"));
    key("spindle-x", Keys.HOME);
    assertEquals(-760_000_000L, shown().get("spindleX"));
    key("spindle-y", Keys.HOME);
    String before = browser.text("gaps");
    key("spindle-y", Keys.END);
    assertEquals(480_000_000L, shown().get("spindleY"));
    assertNotEquals(before, browser.text("gaps"));
    assertEquals("240.00 mm", browser.byId("spindle-y").getDomAttribute("aria-valuetext"));
    browser.find(By.cssSelector("[aria-label='Spindle over the table, y: less']")).click();
    assertEquals(478_000_000L, shown().get("spindleY"));
    browser.byId("to-tightest").click();
    assertTrue(browser.text("now").contains("margin 12.50 mm"), browser.text("now"));
    quiet();
  }

  @Test
  void pairing_loading_holdsTheAxesAndSaysWhy() throws InterruptedException {
    go("middle closed mill", "plain 125");
    browser.find(By.cssSelector("input[name=situation][value='1'] + span")).click();
    key("spindle-x", Keys.HOME);
    browser.find(By.cssSelector("input[name=situation][value='2'] + span")).click();
    assertEquals(480_000_000L, shown().get("spindleY"));
    assertFalse(browser.byId("spindle-x").isEnabled());
    assertTrue(
        browser.text("jog-reason").startsWith("While loading the axes stand at the load position"));
    assertTrue(browser.text("moment").contains("loading"));
    browser.find(By.cssSelector("input[name=situation][value='1'] + span")).click();
    assertTrue(browser.byId("spindle-x").isEnabled());
    assertEquals(-760_000_000L, shown().get("spindleX"));
    quiet();
  }

  @Test
  void pairing_vise_isDraggedAlongTheSlotsWithMouseAndFinger() throws InterruptedException {
    go("middle closed mill", "plain 125");
    Map<?, ?> before = shown();
    WebElement base = browser.find(By.cssSelector("#plan .p-base"));
    browser.run("arguments[0].scrollIntoView({block: 'center'})", base);
    new Actions(browser.driver())
        .moveToElement(base, 0, 20)
        .clickAndHold()
        .moveByOffset(60, 2)
        .release()
        .perform();
    Map<?, ?> after = shown();
    assertTrue((Long) after.get("x") > (Long) before.get("x"), after.toString());
    assertEquals(before.get("turn"), after.get("turn"));
    assertTrue(browser.text("travel").contains("no longer stands where it is recommended"));
    assertTrue(isAPlace(after), after.toString());

    finger(browser.find(By.cssSelector("#plan .p-base")), -90, 0);
    Map<?, ?> last = shown();
    assertTrue((Long) last.get("x") < (Long) after.get("x"), last.toString());
    assertTrue(isAPlace(last), last.toString());
    browser.byId("to-recommended").click();
    assertEquals(before.get("x"), shown().get("x"));
    quiet();
  }

  @Test
  void pairing_spindleCross_isDragged() throws InterruptedException {
    go("middle closed mill", "plain 125");
    Map<?, ?> before = shown();
    WebElement cross = browser.find(By.cssSelector("#plan .spindle-ring"));
    browser.run("arguments[0].scrollIntoView({block: 'center'})", cross);
    new Actions(browser.driver())
        .moveToElement(cross)
        .clickAndHold()
        .moveByOffset(50, 0)
        .release()
        .perform();
    assertTrue((Long) shown().get("spindleX") > (Long) before.get("spindleX"));
    assertEquals(before.get("x"), shown().get("x"));
    quiet();
  }

  private static void finger(WebElement on, int right, int down) {
    PointerInput finger = new PointerInput(PointerInput.Kind.TOUCH, "finger");
    Sequence drag = new Sequence(finger, 0);
    drag.addAction(
        finger.createPointerMove(Duration.ZERO, PointerInput.Origin.fromElement(on), 0, 20));
    drag.addAction(finger.createPointerDown(0));
    drag.addAction(
        finger.createPointerMove(
            Duration.ofMillis(100), PointerInput.Origin.pointer(), right, down));
    drag.addAction(finger.createPointerUp(0));
    browser.driver().perform(List.of(drag));
  }

  /** Whether the solver's own places hold where the page let the vise go. */
  private static boolean isAPlace(Map<?, ?> state) {
    return Boolean.TRUE.equals(
        browser.run(
            "const data = JSON.parse(document.getElementById('data').textContent);"
                + "const [m, v] = location.hash.slice(1).split('/').map((n) => n - 1);"
                + "return data.pairings[m * data.vises.length + v].seats.map(Model.seat)"
                + ".filter((one) => one.turn === arguments[0] && one.mount === arguments[1])"
                + ".some((one) => one.places.some((p) => p.x[0] <= arguments[2] && arguments[2] <= p.x[1]"
                + " && p.y[0] <= arguments[3] && arguments[3] <= p.y[1]))",
            state.get("turn"),
            state.get("mount"),
            state.get("x"),
            state.get("y")));
  }

  @Test
  void pairing_choices_turnMountSlotsZoomUnitAndOtherPairings() throws InterruptedException {
    go("bridge mill", "centring 125");
    assertTrue(count("#seat option") > 1);
    String seat = browser.text("where").split(", bolts?")[0];
    choose("seat", "0".equals(browser.byId("seat").getDomProperty("value")) ? "1" : "0");
    assertNotEquals(seat, browser.text("where").split(", bolts?")[0]);
    assertTrue(isAPlace(shown()));
    assertEquals("seat", active().getDomAttribute("id"));
    Object y = shown().get("y");
    choose("slots", "0".equals(browser.byId("slots").getDomProperty("value")) ? "1" : "0");
    assertNotEquals(y, shown().get("y"));
    assertTrue(isAPlace(shown()));
    key("vise-x", Keys.HOME);
    assertTrue(isAPlace(shown()));
    key("vise-y", Keys.END);
    assertTrue(isAPlace(shown()));
    browser.find(By.cssSelector("input[name=zoom][value=near] + span")).click();
    browser.settled();
    assertTrue(count("#plan .part") > 3);
    browser.find(By.cssSelector("#units input[value=in] + span")).click();
    browser.settled();
    assertTrue(browser.text("now").contains(" in, "), browser.text("now"));
    choose("to-vise", "2");
    browser.until(
        "the next pairing",
        "document.getElementById('pairing-title').textContent === 'plain 160 on bridge mill'");
    choose("to-machine", "1");
    browser.until(
        "the next pairing",
        "document.getElementById('pairing-title').textContent === 'plain 160 on knee mill'");
    browser.find(By.cssSelector(".back")).click();
    browser.until("the matrix back", "!document.getElementById('overview').hidden");
    assertEquals("0.00 in", browser.find(By.cssSelector("#extra output")).getText());
    quiet();
  }

  @Test
  void vise_draggedOutOfReach_turnsAmberAndNamesWhatIsMissed() throws InterruptedException {
    go("small closed mill", "six inch");
    assertEquals("", browser.text("doubts"));
    key("vise-x", Keys.END);
    assertEquals(
        "! Spindle misses "
            + missed("small closed mill", "six inch")
            + " mm of the work. ! No room to tap it square.",
        browser.text("doubts"));
    assertEquals(1, count(".now-box.amber"));
    assertEquals(1, count("#plan.amber"));
    browser.byId("to-recommended").click();
    browser.settled();
    assertEquals("", browser.text("doubts"));
    assertEquals(0, count(".amber"));
    quiet();
  }

  /** By how much the jaws, wide open, stick out of the spindle's reach to the right. */
  private static String missed(String machine, String vise) {
    Machine mill =
        page.shop().machines().stream().filter(m -> m.name().equals(machine)).findAny().get();
    Vise held = page.shop().vises().stream().filter(v -> v.name().equals(vise)).findAny().get();
    long right = ((Number) shown().get("x")).longValue() + held.jaws().width() / 2;
    return PeopleUnit.MM.text(right - mill.spindleX() - mill.reachX(), Rounding.UP);
  }

  @Test
  void pairing_heldByStraps_drawsThem() throws InterruptedException {
    go("bridge mill", "eight inch");
    assertEquals(2, count("#plan .p-clamps"));
    assertTrue(
        browser.text("where").contains("strap clamps (M16 studs) in slot"), browser.text("where"));
    assertTrue(
        browser.text("range").startsWith("It may stand: base’s left side "), browser.text("range"));
    quiet();
  }

  @Test
  void pairing_withoutAPlace_isSaidInWords() throws InterruptedException {
    go("bench mill", "plain 160");
    assertEquals(0, count("#plan"));
    assertTrue(browser.text("pairing").contains("Why nothing holds it"));
    go("long knee mill", "swivelling old vise");
    assertTrue(browser.text("pairing").contains("Not measured"));
    assertTrue(
        browser.text("pairing").contains("vises.rear_projection_closed"), browser.text("pairing"));
    quiet();
  }

  @Test
  void page_onAPhone_neverScrollsSideways() throws InterruptedException {
    browser.size(360, 740);
    browser.open(file);
    assertNothingSideways("matrix");
    assertEquals(
        true,
        browser.run(
            "const box = document.getElementById('matrix-box'); return box.scrollWidth > box.clientWidth"));
    for (String vise : List.of("plain 125", "eight inch", "centring 125", "plain 160")) {
      go("small closed mill", vise);
      assertNothingSideways(vise);
    }
    quiet();
  }

  private static void assertNothingSideways(String where) {
    assertEquals(
        browser.run("return document.documentElement.clientWidth"),
        browser.run("return document.documentElement.scrollWidth"),
        where);
  }

  @Test
  void page_inTheDark_isDark() {
    String light = browser.find(By.tagName("body")).getCssValue("background-color");
    browser.scheme("dark");
    assertNotEquals(light, browser.find(By.tagName("body")).getCssValue("background-color"));
    quiet();
  }

  @Test
  void page_printed_isOnePageWithItsCautions() throws Exception {
    assertPrintsOnOnePage("Which vise goes on which machine");
    for (String vise : List.of("plain 125", "plain 160", "eight inch", "double station")) {
      go("small closed mill", vise);
      assertPrintsOnOnePage(vise + " on small closed mill");
    }
    quiet();
  }

  private static void assertPrintsOnOnePage(String title) throws IOException {
    Map<String, Object> printed =
        browser
            .driver()
            .executeCdpCommand(
                "Page.printToPDF", Map.of("printBackground", true, "preferCSSPageSize", true));
    byte[] bytes = Base64.getDecoder().decode((String) printed.get("data"));
    try (PDDocument document = Loader.loadPDF(bytes)) {
      assertEquals(1, document.getNumberOfPages(), title);
      String text = new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
      assertTrue(text.contains(title), text);
      assertTrue(text.contains("Lock out before reaching in"), text);
    }
  }

  /** Nothing is known of the rear cover until a value is supposed; the verdict stays unknown. */
  @Test
  void pairing_unknown_showsGapsOnceAValueIsSupposed() throws Exception {
    go("offered mill", "plain 125");
    assertTrue(
        browser.byId("now").getText().contains("not measured"), browser.byId("now")::getText);
    browser.run("document.getElementById('suppose').open = true");
    browser.byId("suppose-0-value").sendKeys("45", Keys.TAB);
    browser.settled();
    String now = browser.byId("now").getText();
    assertTrue(now.startsWith("Supposing rear_gap is 45.00 mm, no verdict. Now: clear"), now);
    assertEquals("? unknown", browser.find(By.cssSelector("#pairing .badge")).getText());
    browser.byId("suppose-nothing").click();
    browser.settled();
    assertTrue(
        browser.byId("now").getText().contains("not measured"), browser.byId("now")::getText);
    quiet();
  }

  /** A vise that stands there now is shown where it stands; the recommended place is a button. */
  @Test
  void pairing_thatStandsThereNow_opensWhereItStands() throws Exception {
    Standing standing =
        page.shop().standing().stream()
            .filter(one -> one.vise().name().equals("centring 80"))
            .findFirst()
            .orElseThrow();
    go(standing.machine().name(), standing.vise().name());
    assertEquals(List.of(standing.x(), standing.y()), List.of(shown().get("x"), shown().get("y")));
    assertTrue(browser.byId("pairing").getText().contains("Here it stands now."));
    browser.byId("to-recommended").click();
    browser.settled();
    assertFalse(browser.byId("pairing").getText().contains("Here it stands now."));
    browser.byId("to-standing-1").click();
    browser.settled();
    assertEquals(List.of(standing.x(), standing.y()), List.of(shown().get("x"), shown().get("y")));
    quiet();
  }

  /** The same vise once more, 1 mm to the right of itself. */
  @Test
  void pairing_thatStandsTooCloseToAnother_saysSoThereAlone() throws Exception {
    Shop shop = page.shop();
    Standing one =
        shop.standing().stream()
            .filter(other -> other.vise().name().equals("centring 80"))
            .findFirst()
            .orElseThrow();
    Machine machine = one.machine();
    Vise vise = one.vise();
    TapedPlace beside =
        TapedPlace.of(machine, vise, one.place().handleTo(), one.x() + Length.MM, one.y());
    Standing other = new Standing(machine, vise, beside, one.mount(), one.provenance());
    Shop crowded =
        new Shop(
            shop.settings(),
            List.of(machine),
            List.of(vise),
            List.of(),
            List.of(),
            List.of(one, other),
            List.of());
    browser.open(ShopPage.of(crowded).write(folder.resolve("crowded")));
    browser.run("location.hash = '#1/1'");
    browser.until("the pairing open", "!document.getElementById('pairing').hidden");
    browser.settled();
    String there = browser.byId("pairing").getText();
    assertTrue(there.contains("! Overlaps centring 80 by "), there);
    browser.byId("to-recommended").click();
    browser.settled();
    String recommended = browser.byId("pairing").getText();
    assertFalse(recommended.contains("verlaps centring 80"), recommended);
    quiet();
  }
}
