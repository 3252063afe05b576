package org.jawroom.report.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.Random;
import java.util.stream.Collectors;
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
import org.jawroom.fixture.SettingsDraft;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Length;
import org.jawroom.geometry.Rectangle;
import org.jawroom.placement.pairing.Model;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.search.Bolted;
import org.jawroom.placement.search.Recommendation;
import org.jawroom.reference.random.RandomShops.Profile;
import org.jawroom.shop.Settings;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.vise.Vise;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The page's numbers, reckoned in a real browser, against the solver's: equal to the
 * half-nanometre.
 */
class PageNumbersTest {
  private static final String GAPS =
      "const data = JSON.parse(document.getElementById('data').textContent);"
          + "const listed = (gaps) => gaps.map((gap) => [gap.guard.name, gap.part.name, gap.gap, gap.required,"
          + " gap.tolerance, gap.margin, gap.axis].join('|')).join('\\n');"
          + "return arguments[0].map((state) => {"
          + "const machine = data.machines[state.machine]; const vise = data.vises[state.vise];"
          + "return state.openings === null ? listed(Model.gaps(data, machine, vise, state))"
          + " : listed(Model.sweptGaps(data, machine, vise, state, state.openings)); });";

  private static final String DOUBTS =
      "const data = JSON.parse(document.getElementById('data').textContent);"
          + "return arguments[0].map((state) => {"
          + "const machine = data.machines[state.machine]; const vise = data.vises[state.vise];"
          + "const pairing = data.pairings[state.machine * data.vises.length + state.vise];"
          + "const seat = pairing.seats.map(Model.seat)"
          + ".find((one) => one.turn === state.turn && one.mount === state.mount);"
          + "const swept = Model.sweptGaps(data, machine, vise, state, vise.opening);"
          + "return Model.settable(data, seat, state, swept) + ' ' + Model.shortfall(machine, vise, state); });";

  private static final String RECOMMENDED =
      "const data = JSON.parse(document.getElementById('data').textContent);"
          + "return data.pairings.map((pairing, i) => { if (pairing.at === undefined || pairing.start === true) { return ''; }"
          + "const machine = data.machines[Math.floor(i / data.vises.length)];"
          + "const vise = data.vises[i % data.vises.length];"
          + "const seat = pairing.seats.map(Model.seat)"
          + ".find((one) => one.turn === pairing.turn && one.mount === pairing.mount);"
          + "const state = { turn: seat.turn, mount: seat.mount, thread: seat.thread, x: pairing.at[0],"
          + " y: pairing.at[1], hand: pairing.hand ? data.handRoom : 0 };"
          + "const swept = Model.sweptGaps(data, machine, vise, state, pairing.openings);"
          + "return Model.settable(data, seat, state, swept) + ' '"
          + " + Model.shortfall(machine, vise, state); });";

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

  /** A position of one pairing, as both sides are asked about it. */
  private record Position(
      Outcome outcome,
      Bolted seat,
      long x,
      long y,
      MachineState moment,
      Map<String, Object> state) {

    long hand() {
      return (Long) state.get("hand");
    }

    @Override
    public String toString() {
      return outcome.vise().name() + " on " + outcome.machine().name() + ", " + state;
    }
  }

  @Test
  void moments_ofTheExampleShop_areTheSolversExactly() throws Exception {
    compareMoments(ShopPage.example(), 300, 1);
  }

  @Test
  void moments_ofTheDemoShop_areTheSolversExactly() throws Exception {
    compareMoments(ShopPage.demo(), 400, 2);
  }

  @Test
  void moments_underAShortestTool_areTheSolversExactly() throws Exception {
    compareMoments(
        ShopPage.read(Path.of("inputs", "demo"), Map.of("shortest_tool", "60 mm", "show", "in")),
        200,
        3);
  }

  @Test
  void moments_withStrapsAndSmallHoles_areTheSolversExactly() throws Exception {
    compareMoments(ShopPage.example2(), 300, 5);
    compareMoments(
        ShopPage.random(
                Settings.DEFAULTS,
                11,
                Profile.PLAIN,
                Profile.SLOTS_ALONG_Y,
                Profile.BOTH_JAWS,
                Profile.HANDLED,
                Profile.EXTRA_MOUNTS)
            .strapped(),
        300,
        6);
  }

  @Test
  void moments_ofRandomShops_areTheSolversExactly() throws Exception {
    Settings settings = withTool(Settings.DEFAULTS, 45 * Length.MM + 1);
    compareMoments(
        ShopPage.random(
            settings,
            5,
            Profile.INCH,
            Profile.SLOTS_ALONG_Y,
            Profile.OTHER_MOVES,
            Profile.SHAPE_PARTS,
            Profile.EXTRA_MOUNTS,
            Profile.CLUTTERED,
            Profile.LOAD_GIVEN,
            Profile.BOTH_JAWS),
        300,
        4);
  }

  private static Settings withTool(Settings given, long tool) {
    SettingsDraft draft = SettingsDraft.of(given);
    draft.shortestTool = OptionalLong.of(tool);
    return draft.build();
  }

  private void compareMoments(ShopPage page, int count, long seed) throws IOException {
    List<Position> positions = positions(page, count, seed);
    List<String> found = asked(page, positions);
    int compared = 0;
    for (int i = 0; i < positions.size(); i++) {
      Position at = positions.get(i);
      MomentGaps gaps =
          MomentGaps.of(
              page.shop().settings().toBuilder().handRoom(at.hand()).build(),
              at.outcome.machine(),
              at.outcome.vise().base().bedHeight(),
              at.seat.parts());
      List<Limit> expected = gaps.at(at.moment, at.seat.turn(), at.x, at.y);
      assertEquals(listed(expected), found.get(i), "seed " + seed + ": " + at);
      compared += expected.size();
    }
    assertTrue(compared > count, "too few gaps: " + compared);
  }

  @Test
  void sweptGaps_atRandomPlacesAndOpenings_areTheSolversExactly() throws Exception {
    ShopPage page = ShopPage.demo();
    List<Position> positions = positions(page, 200, 7);
    Random lot = new Random(8);
    for (Position at : positions) {
      Interval all = at.outcome.vise().opening();
      long one = within(lot, all);
      long other = within(lot, all);
      at.state.put("openings", List.of(Math.min(one, other), Math.max(one, other)));
    }
    List<String> found = asked(page, positions);
    for (int i = 0; i < positions.size(); i++) {
      Position at = positions.get(i);
      List<?> openings = (List<?>) at.state.get("openings");
      List<Limit> expected =
          swept(page, at).limits(at, Interval.of((Long) openings.get(0), (Long) openings.get(1)));
      // The solver orders equal ones by guard and part, then cutting before loading.
      assertEquals(sorted(listed(expected)), sorted(found.get(i)), at.toString());
      assertEquals(
          expected.isEmpty() ? "" : String.valueOf(expected.get(0).margin()),
          found.get(i).isEmpty() ? "" : found.get(i).split("\n")[0].split("\\|")[5]);
    }
  }

  @Test
  void doubts_atRandomPlaces_areTheSolvers() throws Exception {
    int settable = 0;
    int unreached = 0;
    List<ShopPage> pages =
        List.of(ShopPage.demo(), ShopPage.example2(), ShopPage.example2().strapped());
    for (ShopPage page : pages) {
      List<Position> positions = positions(page, 300, 9);
      browser.open(page.write(folder));
      List<?> found =
          (List<?>) browser.run(DOUBTS, positions.stream().map(Position::state).toList());
      for (int i = 0; i < positions.size(); i++) {
        Position at = positions.get(i);
        boolean square = isSettable(page, at);
        long shortfall = shortfall(at);
        assertEquals(square + " " + shortfall, found.get(i), at.toString());
        settable += square ? 1 : 0;
        unreached += shortfall > 0 ? 1 : 0;
      }
    }
    assertTrue(settable > 50 && settable < 850, "settable " + settable);
    assertTrue(unreached > 50 && unreached < 850, "out of reach " + unreached);
  }

  /** Section 6 of the model, pair by pair. */
  private static boolean isSettable(ShopPage page, Position at) {
    long tap = page.shop().settings().tapRoom();
    return at.seat.settable().stream().anyMatch(places -> places.contains(at.x, at.y))
        && swept(page, at).limits(at, at.outcome.vise().opening()).stream()
            .allMatch(
                limit ->
                    Math.max(
                            Math.max(gap(limit, Axis.X), gap(limit, Axis.Y)) - tap,
                            gap(limit, Axis.Z))
                        >= limit.required() + limit.tolerance());
  }

  private static long gap(Limit limit, Axis axis) {
    Interval part = limit.partBox().along(axis);
    Interval guard = limit.guardBox().along(axis);
    return Math.max(guard.lo() - part.hi(), part.lo() - guard.hi());
  }

  private static long shortfall(Position at) {
    Machine machine = at.outcome.machine();
    Rectangle reach =
        new Rectangle(
            Interval.around(machine.spindleX(), machine.reachX()),
            Interval.around(machine.spindleY(), machine.reachY()));
    return reach.shortfall(workArea(at), at.x, at.y);
  }

  /** Between the jaws wide open, {@code jaw_width} wide; section 7 of the model. */
  private static Rectangle workArea(Position at) {
    Vise vise = at.outcome.vise();
    long widest = vise.opening().hi();
    Interval u = vise.jaws().both() ? Interval.around(0, widest / 2) : Interval.of(0, widest);
    Interval v = Interval.around(0, vise.jaws().width() / 2);
    return new Rectangle(at.seat.turn().x(u, v), at.seat.turn().y(u, v));
  }

  @Test
  void recommendedPlaces_areSettableAndShort_asReported() throws Exception {
    for (ShopPage page : List.of(ShopPage.demo(), ShopPage.example2())) {
      browser.open(page.write(folder));
      List<?> found = (List<?>) browser.run(RECOMMENDED);
      List<String> expected =
          page.outcomes().stream()
              .map(
                  outcome ->
                      outcome
                          .recommended()
                          .map(place -> place.settable() + " " + place.reachShortfall())
                          .orElse(""))
              .toList();
      assertEquals(expected, found);
    }
  }

  private record Swept(List<Pair> pairs) {
    List<Limit> limits(Position at, Interval openings) {
      return MarginField.of(pairs, at.seat.turn(), openings).limits(at.x, at.y);
    }
  }

  private static Swept swept(ShopPage page, Position at) {
    Settings settings = page.shop().settings();
    MachineGuards guards =
        MachineGuards.of(
            settings,
            at.outcome.machine(),
            Setup.PLAIN,
            at.outcome.vise().base().bedHeight(),
            Certainty.AT_WORST,
            new Blanks());
    return new Swept(Pair.all(at.hand(), at.seat.parts(), guards.swept()));
  }

  private static List<String> sorted(String lines) {
    return lines.lines().sorted().toList();
  }

  @Test
  void tightestMoment_inTheRecommendedPlace_hasTheMatrixMargin() throws Exception {
    ShopPage page = ShopPage.demo();
    browser.open(page.write(folder));
    int compared = 0;
    for (int i = 0; i < page.pairings().size(); i++) {
      Outcome outcome = page.outcomes().get(i);
      if (outcome
          .recommended()
          .flatMap(Recommendation::limit)
          .filter(l -> l.gap() >= 0)
          .isEmpty()) {
        continue;
      }
      Object margin =
          browser.run(
              "Pairing.show(arguments[0], arguments[1]);"
                  + "const data = JSON.parse(document.getElementById('data').textContent);"
                  + "return String(Model.gaps(data, data.machines[arguments[0]], data.vises[arguments[1]],"
                  + " Pairing.shown())[0].margin)",
              i / page.shop().vises().size(),
              i % page.shop().vises().size());
      assertEquals(
          String.valueOf(outcome.recommended().get().limit().get().margin()),
          margin,
          outcome.vise().name() + " on " + outcome.machine().name());
      compared++;
    }
    assertTrue(compared > 60, "only " + compared);
  }

  @Test
  void slots_inTheRecommendedPlaces_areThoseReported() throws Exception {
    for (ShopPage page : List.of(ShopPage.demo(), ShopPage.example())) {
      browser.open(page.write(folder));
      List<?> found =
          (List<?>)
              browser.run(
                  "const data = JSON.parse(document.getElementById('data').textContent);"
                      + "return data.pairings.map((pairing, i) => { if (pairing.at === undefined || pairing.start === true) { return ''; }"
                      + "const machine = data.machines[Math.floor(i / data.vises.length)];"
                      + "const seat = pairing.seats.map(Model.seat)"
                      + ".find((one) => one.turn === pairing.turn && one.mount === pairing.mount);"
                      + "return Model.slots(machine, data.vises[i % data.vises.length],"
                      + " { turn: seat.turn, mount: seat.mount, thread: seat.thread, x: pairing.at[0], y: pairing.at[1],"
                      + " opening: pairing.openings[0] }).join(';'); });");
      List<String> expected =
          page.outcomes().stream()
              .map(outcome -> outcome.recommended().map(Recommendation::slots).orElse(List.of()))
              .map(slots -> slots.stream().map(String::valueOf).collect(Collectors.joining(";")))
              .toList();
      assertEquals(expected, found);
    }
  }

  private List<String> asked(ShopPage page, List<Position> positions) throws IOException {
    browser.open(page.write(folder));
    Object answer = browser.run(GAPS, positions.stream().map(Position::state).toList());
    List<String> found = new ArrayList<>();
    ((List<?>) answer).forEach(one -> found.add((String) one));
    return found;
  }

  private static List<Position> positions(ShopPage page, int count, long seed) {
    Random lot = new Random(seed);
    List<Integer> drawn = new ArrayList<>();
    for (int i = 0; i < page.pairings().size(); i++) {
      if (page.outcomes().get(i).recommended().isPresent()) {
        drawn.add(i);
      }
    }
    List<Position> positions = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      positions.add(position(page, drawn.get(i % drawn.size()), lot));
    }
    return positions;
  }

  private static Position position(ShopPage page, int index, Random lot) {
    Outcome outcome = page.outcomes().get(index);
    Machine machine = outcome.machine();
    Vise vise = outcome.vise();
    List<Bolted> seats = Model.of(page.shop().settings(), machine, vise, Setup.PLAIN).bolted();
    Bolted seat = seats.get(lot.nextInt(seats.size()));
    Rectangle places = seat.places().get(lot.nextInt(seat.places().size()));
    long x = within(lot, places.x());
    long y = within(lot, places.y());
    long opening = within(lot, vise.opening());
    MachineState moment =
        lot.nextBoolean()
            ? MachineState.cutting(
                within(lot, Interval.around(machine.spindleX(), machine.reachX())),
                within(lot, Interval.around(machine.spindleY(), machine.reachY())),
                opening)
            : MachineState.loading(machine, opening);
    Map<String, Object> state = new LinkedHashMap<>();
    state.put("machine", index / page.shop().vises().size());
    state.put("vise", index % page.shop().vises().size());
    state.put("turn", seat.turn().word());
    state.put("mount", seat.fastening().index());
    state.put("thread", seat.fastening().anchors().orElseThrow().nutRoom());
    state.put("x", x);
    state.put("y", y);
    state.put("situation", moment.situation() == Situation.CUTTING ? 1 : 2);
    state.put("spindleX", moment.spindleX());
    state.put("spindleY", moment.spindleY());
    state.put("opening", opening);
    state.put("openings", null);
    state.put("hand", lot.nextBoolean() ? page.shop().settings().handRoom() : 0L);
    return new Position(outcome, seat, x, y, moment, state);
  }

  /** Any half-nanometre of an interval, its ends now and then. */
  private static long within(Random lot, Interval interval) {
    return switch (lot.nextInt(6)) {
      case 0 -> interval.lo();
      case 1 -> interval.hi();
      default -> interval.lo() + (long) (lot.nextDouble() * interval.length());
    };
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
                    String.valueOf(limit.required()),
                    String.valueOf(limit.tolerance()),
                    String.valueOf(limit.margin()),
                    limit.axis().letter()))
        .collect(Collectors.joining("\n"));
  }
}
