package org.jawroom.report.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.jawroom.clearance.Situation;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Length;
import org.jawroom.geometry.Orientation;
import org.jawroom.geometry.Rectangle;
import org.jawroom.placement.pairing.Inspection;
import org.jawroom.placement.pairing.Layout;
import org.jawroom.placement.pairing.Layout.PlacedPart;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.pairing.Pairing;
import org.jawroom.placement.pairing.SolvedPairing;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.placement.space.Place;
import org.jawroom.reference.random.RandomShops;
import org.jawroom.reference.random.RandomShops.Profile;
import org.jawroom.shop.Shop;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.value.When;
import org.jawroom.shop.vise.Swivel;
import org.jawroom.shop.vise.Vise;
import org.jawroom.shop.vise.VisePart;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;

/**
 * What a real browser draws of a vise turned on its swivel base, against the solver's layout: the
 * outline round what is there, and the strips that count.
 */
class PageTurnedTest {

  /** Of one coordinate as it is printed in a drawing, pixels. */
  private static final double PRINTED = 0.0051;

  /** How far a corner may be drawn outside: 0.01 along either side, and what printing makes. */
  private static final double OUTSIDE = 0.0215;

  /** Frames of the two drawings made again, which give the scale exactly, and what they show. */
  private static final String DRAWN =
      "const data = JSON.parse(document.getElementById('data').textContent);"
          + "const [m, v] = location.hash.slice(1).split('/').map((n) => n - 1);"
          + "const state = Pairing.shown(); const machine = data.machines[m];"
          + "const vise = Object.assign({}, data.vises[v], data.pairings[m * data.vises.length + v].narrowed);"
          + "const ctx = { data: data, machine: machine, vise: vise, state: state, zoom: arguments[0],"
          + " gaps: Model.gaps(data, machine, vise, state) };"
          + "const width = document.getElementById('plan').parentElement.clientWidth;"
          + "const again = (draw, id) => { const svg = Dom.draw('svg', {}); const frame = draw(svg, ctx, width);"
          + " return { same: svg.innerHTML === document.getElementById(id).innerHTML,"
          + " left: frame.across[0], top: frame.up[1], scale: frame.scale }; };"
          + "const titled = (one) => one.querySelector('title').textContent;"
          + "const all = (selector) => Array.from(document.querySelectorAll(selector));"
          + "return { short: Model.shortfall(machine, vise, state), plan: again(Drawing.plan, 'plan'), side: again(Drawing.side, 'side'),"
          + " outlines: all('#plan polygon').map((one) => [titled(one), one.getAttribute('points'),"
          + " one.previousElementSibling.getAttribute('d')]),"
          + " bodies: all('#side rect.part').map((one) => [titled(one)].concat(['x', 'y', 'width', 'height']"
          + ".map((name) => one.getAttribute(name)))) };";

  @TempDir private static Path folder;

  private static Browser browser;
  private static Shop shop;
  private static Path file;

  private final Set<String> met = new TreeSet<>();

  @BeforeAll
  static void start() throws Exception {
    browser = Browser.start().orElse(null);
    Shop demo = ShopPage.demo().shop();
    Vise swivel = vise(demo, "six inch swivel");
    VisePart hose =
        new VisePart(
            "hose",
            When.ALWAYS,
            Interval.of(20 * Length.MM, 60 * Length.MM),
            Interval.of(40 * Length.MM, 120 * Length.MM),
            Interval.of(70 * Length.MM, 110 * Length.MM),
            Interval.of(90 * Length.MM, 130 * Length.MM),
            OptionalLong.empty());
    List<Vise> vises =
        Stream.concat(
                Stream.of(turned(swivel, "30")),
                Orientation.ALL.stream()
                    .map(
                        turn ->
                            turned(
                                swivel.toBuilder()
                                    .name("swivel " + turn.name())
                                    .turns(Set.of(turn))
                                    .parts(List.of(hose))
                                    .build(),
                                turn.ordinal() % 2 == 0 ? "-52.5" : "7")))
            .toList();
    List<Machine> machines =
        Stream.of("inch closed mill", "cross-slot mill")
            .map(name -> machine(demo, name).withTurns(EnumSet.allOf(Orientation.class)))
            .toList();
    shop = new Shop(demo.settings(), machines, vises, List.of());
    file = ShopPage.of(shop).write(folder);
  }

  private static Vise vise(Shop shop, String name) {
    return shop.vises().stream().filter(one -> one.name().equals(name)).findFirst().orElseThrow();
  }

  private static Machine machine(Shop shop, String name) {
    return shop.machines().stream()
        .filter(one -> one.name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  private static Vise turned(Vise vise, String degrees) {
    return vise.turned(
        new Swivel(vise.name(), new BigDecimal(degrees), 75 * Length.MM + 1, OptionalLong.empty()));
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
    browser.open(file);
  }

  @Test
  void turnedParts_atEveryOpeningPlaceAndSituation_areDrawnWhereTheyAre() throws Exception {
    for (int m = 0; m < shop.machines().size(); m++) {
      for (int v = 0; v < shop.vises().size(); v++) {
        Machine machine = shop.machines().get(m);
        Vise vise = shop.vises().get(v);
        Optional<Inspection> found = Pairing.solved(shop.settings(), machine, vise).inspection();
        if (found.isEmpty()) {
          continue; // nothing holds it in that turn
        }
        Inspection inspection = found.get();
        browser.run("location.hash = arguments[0]", "#" + (m + 1) + "/" + (v + 1));
        browser.until("the pairing open", "!document.getElementById('pairing').hidden");
        for (String zoom : List.of("whole", "near")) {
          press("zoom", zoom);
          for (Situation situation : Situation.values()) {
            press("situation", situation == Situation.CUTTING ? "1" : "2");
            browser.byId("opening").sendKeys(Keys.END);
            compare(inspection, situation, zoom);
            browser.byId("opening").sendKeys(Keys.HOME, Keys.ARROW_RIGHT);
            browser.byId("vise-x").sendKeys(Keys.END);
            compare(inspection, situation, zoom);
            browser.byId("vise-x").sendKeys(Keys.HOME);
            compare(inspection, situation, zoom);
          }
        }
      }
    }
    assertEquals(
        Set.of(
            "FRONT",
            "RIGHT",
            "REAR",
            "LEFT",
            "handle",
            "hose",
            "moved",
            "out of reach",
            "turned body"),
        met);
    assertEquals(List.of(), browser.console());
  }

  /** On a phone, too, where the drawing is narrower. */
  @Test
  void turnedParts_onAPhone_areDrawnWhereTheyAre() throws Exception {
    browser.size(390, 844);
    browser.open(file);
    browser.run("location.hash = '#1/1'");
    browser.until("the pairing open", "!document.getElementById('pairing').hidden");
    Vise vise = shop.vises().get(0);
    assertEquals("six inch swivel @30", vise.name());
    String range = browser.text("range");
    assertTrue(range.contains("can be tapped square (computed at its angle)"), range);
    compare(
        Pairing.solved(shop.settings(), shop.machines().get(0), vise).inspection().orElseThrow(),
        Situation.CUTTING,
        "near");
    assertEquals(List.of(), browser.console());
  }

  /** Limited to part of its opening, it is shown with that alone, and its jaws go no farther. */
  @Test
  void limitedTurnedVise_isShownWithItsJawsKept() throws Exception {
    int met = 0;
    for (long seed = 0; seed < 400 && met < 4; seed++) {
      Shop random = RandomShops.shop(Profile.FEW_GUARDS, seed);
      Vise vise = turned(RandomShops.vise(random), "35");
      Machine machine = RandomShops.machine(random);
      SolvedPairing solved = Pairing.solved(random.settings(), machine, vise);
      Outcome outcome = solved.outcome();
      if (outcome.verdict() != Verdict.LIMITED) {
        continue;
      }
      met++;
      Shop one = new Shop(random.settings(), List.of(machine), List.of(vise), List.of());
      browser.open(ShopPage.of(one).write(folder.resolve("limited-" + seed)));
      browser.run("location.hash = '#1/1'");
      browser.until("the pairing open", "!document.getElementById('pairing').hidden");
      browser.settled();
      Interval usable = outcome.usableOpening().orElseThrow();
      browser.byId("opening").sendKeys(Keys.END);
      assertEquals(usable.hi(), ((Map<?, ?>) browser.run("return Pairing.shown()")).get("opening"));
      browser.byId("opening").sendKeys(Keys.HOME);
      assertEquals(usable.lo(), ((Map<?, ?>) browser.run("return Pairing.shown()")).get("opening"));
      browser.settled();
      long margin = outcome.recommended().orElseThrow().margin().orElseThrow();
      String rounded = BigDecimal.valueOf(margin / (Length.MM / 100), 2).toString();
      assertTrue(browser.text("here").contains("margin " + rounded + " mm"), browser.text("here"));
      Situation shown =
          ((Map<?, ?>) browser.run("return Pairing.shown()")).get("situation").equals(1L)
              ? Situation.CUTTING
              : Situation.LOADING;
      compare(solved.inspection().orElseThrow(), shown, "whole");
    }
    assertEquals(4, met);
    assertEquals(List.of(), browser.console());
  }

  private static void press(String name, String value) {
    browser.find(By.cssSelector("input[name=" + name + "][value='" + value + "'] + span")).click();
  }

  private void compare(Inspection inspection, Situation situation, String zoom) {
    browser.settled();
    Map<?, ?> shown = (Map<?, ?>) browser.run("return Pairing.shown()");
    Map<?, ?> drawn = (Map<?, ?>) browser.run(DRAWN, zoom);
    long dx = (Long) shown.get("x") - inspection.place().x();
    long dy = (Long) shown.get("y") - inspection.place().y();
    met.add(inspection.place().handleTo().name());
    if (dx != 0) {
      met.add("moved");
    }
    long missed = missed(inspection.layout(), dx, dy);
    assertEquals(missed, drawn.get("short"));
    if (missed > 0) {
      met.add("out of reach");
    }
    Map<String, List<PlacedPart>> strips = new LinkedHashMap<>();
    for (PlacedPart part : inspection.layout().parts()) {
      if (part.part().situation() == situation && !part.outline().isEmpty()) {
        strips.computeIfAbsent(part.part().name(), any -> new ArrayList<>()).add(part);
      }
    }
    Frame plan = Frame.of((Map<?, ?>) drawn.get("plan"), dx, dy);
    Frame side = Frame.of((Map<?, ?>) drawn.get("side"), dy, 0);
    Set<String> outlined = new TreeSet<>();
    for (Object one : (List<?>) drawn.get("outlines")) {
      List<?> fields = (List<?>) one;
      String name = (String) fields.get(0);
      assertTrue(outlined.add(name), name + " twice");
      List<PlacedPart> own = strips.get(name);
      assertOutline(name, plan, own.get(0).outline(), (String) fields.get(1));
      assertStrips(name, plan, own, (String) fields.get(2));
      if (name.equals("handle") || name.equals("hose") || name.equals("turned body")) {
        met.add(name);
      }
    }
    assertEquals(new TreeSet<>(strips.keySet()), outlined);
    strips.forEach((name, own) -> assertBody(name, side, own, (List<?>) drawn.get("bodies")));
  }

  /**
   * Where a length stands in a drawing; the vise stands {@code right} and {@code up} of the place
   * of the layout.
   */
  private record Frame(double left, double top, double scale, long right, long up) {
    static Frame of(Map<?, ?> drawing, long right, long up) {
      assertEquals(true, drawing.get("same"), "drawn again it is the same");
      return new Frame(
          number(drawing, "left"), number(drawing, "top"), number(drawing, "scale"), right, up);
    }

    private static double number(Map<?, ?> from, String name) {
      return ((Number) from.get(name)).doubleValue();
    }

    double h(long length) {
      return (length + right - left) * scale;
    }

    double v(long length) {
      return (top - length - up) * scale;
    }
  }

  /** By how much the turned work area, moved by (dx, dy), sticks out of the spindle's reach. */
  private static long missed(Layout layout, long dx, long dy) {
    Rectangle work = layout.workArea().at(dx, dy);
    Rectangle reach = layout.reach();
    return Stream.of(
            0L,
            reach.x().lo() - work.x().lo(),
            work.x().hi() - reach.x().hi(),
            reach.y().lo() - work.y().lo(),
            work.y().hi() - reach.y().hi())
        .max(Long::compare)
        .orElseThrow();
  }

  /** Printed nowhere inside, and nowhere farther outside than {@link #OUTSIDE}. */
  private static void assertOutline(String name, Frame frame, List<Place> outline, String printed) {
    String[] points = printed.split(" ");
    assertEquals(outline.size(), points.length, name);
    double[][] corners = new double[points.length][];
    double[][] exact = new double[points.length][];
    for (int i = 0; i < points.length; i++) {
      corners[i] = Stream.of(points[i].split(",")).mapToDouble(Double::parseDouble).toArray();
      exact[i] = new double[] {frame.h(outline.get(i).x()), frame.v(outline.get(i).y())};
      double off = Math.hypot(corners[i][0] - exact[i][0], corners[i][1] - exact[i][1]);
      assertTrue(off <= OUTSIDE, name + " off by " + off);
    }
    for (double[] corner : exact) {
      int left = 0;
      for (int i = 0; i < corners.length; i++) {
        double[] from = corners[i];
        double[] to = corners[(i + 1) % corners.length];
        double across =
            (to[0] - from[0]) * (corner[1] - from[1]) - (to[1] - from[1]) * (corner[0] - from[0]);
        left += across > 0 ? 1 : -1;
      }
      assertEquals(corners.length, Math.abs(left), name + ", printed inside: " + printed);
    }
  }

  /** Each strip, seen from above, in the order of the solver. */
  private static void assertStrips(String name, Frame frame, List<PlacedPart> strips, String path) {
    String[] printed = path.substring(1).split("M");
    assertEquals(strips.size(), printed.length, name);
    for (int i = 0; i < printed.length; i++) {
      double[] numbers =
          Stream.of(printed[i].split("[,hvz]")).mapToDouble(Double::parseDouble).toArray();
      PlacedPart strip = strips.get(i);
      assertEquals(frame.h(strip.swept().x().lo()), numbers[0], PRINTED, name);
      assertEquals(frame.v(strip.swept().y().hi()), numbers[1], PRINTED, name);
      assertEquals(strip.swept().x().length() * frame.scale(), numbers[2], PRINTED, name);
      assertEquals(strip.swept().y().length() * frame.scale(), numbers[3], PRINTED, name);
    }
  }

  /** All strips of a part together, from the side. */
  private static void assertBody(
      String name, Frame frame, List<PlacedPart> strips, List<?> bodies) {
    Interval y = strips.stream().map(one -> one.swept().y()).reduce(Interval::hull).orElseThrow();
    Interval z = strips.get(0).swept().z();
    assertTrue(
        bodies.stream()
            .map(body -> (List<?>) body)
            .filter(body -> body.get(0).equals(name))
            .anyMatch(
                body ->
                    near(frame.h(y.lo()), body.get(1))
                        && near(frame.v(z.hi()), body.get(2))
                        && near(y.length() * frame.scale(), body.get(3))
                        && near(z.length() * frame.scale(), body.get(4))),
        () -> name + " from the side: " + bodies);
  }

  private static boolean near(double expected, Object printed) {
    return Math.abs(expected - Double.parseDouble((String) printed)) <= PRINTED;
  }
}
