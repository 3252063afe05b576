package org.jawroom.report.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jawroom.clearance.gap.JawEnd;
import org.jawroom.clearance.gap.Limit;
import org.jawroom.clearance.part.PartRole;
import org.jawroom.fixture.ShopCsv;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Length;
import org.jawroom.geometry.Orientation;
import org.jawroom.placement.pairing.Caveat;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.placement.search.Recommendation;
import org.jawroom.reference.random.RandomShops;
import org.jawroom.report.Drawn;
import org.jawroom.report.Drawn.Area;
import org.jawroom.report.format.ThreadWords;
import org.jawroom.shop.Shop;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.vise.Vise;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Drawings as structure: the rectangles and dimensions of an SVG against what the solver found. */
class PairingDrawingTest {

  /** A ten-thousandth of a point, at a scale of at least a quarter of a point to the millimetre. */
  private static final double NEAR = 0.002 * Length.MM;

  private static final List<Drawn> DRAWINGS = new ArrayList<>();

  @BeforeAll
  static void draw() throws Exception {
    DRAWINGS.addAll(Drawn.all(Drawn.shop("src/test/resources/org/jawroom/golden/example")));
    DRAWINGS.addAll(Drawn.all(Drawn.shop("src/test/resources/org/jawroom/golden/example-2")));
    DRAWINGS.addAll(Drawn.all(Drawn.shop("inputs/demo")));
  }

  @AfterAll
  static void forget() {
    DRAWINGS.clear();
  }

  static Stream<Arguments> drawings() {
    return DRAWINGS.stream()
        .map(
            drawn ->
                Arguments.of(
                    drawn.outcome().machine().name() + " × " + drawn.outcome().vise().name(),
                    drawn));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("drawings")
  void views_ofEachPairing_areToOneScale(String name, Drawn drawn) {
    assertEquals(drawn.scale(), drawn.sideScale(), drawn.scale() * 1e-4);
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("drawings")
  void slots_ofEachPairing_lieWhereTheTableHasThem(String name, Drawn drawn) {
    Machine machine = drawn.outcome().machine();
    boolean alongX = machine.slots().direction() == Axis.X;
    double front = -(alongX ? machine.tableWidth() : machine.tableLength()) / 2.0;
    for (int slot = 1; slot <= machine.slots().count(); slot++) {
      Area area = drawn.area("plan-slot-" + slot);
      double centre = alongX ? (area.low() + area.high()) / 2 : (area.left() + area.right()) / 2;
      double expected;
      if (!machine.slots().positions().isEmpty()) {
        expected = front + machine.slots().positions().get(slot - 1);
      } else if (machine.slots().first().isPresent()) {
        expected =
            front
                + machine.slots().first().getAsLong()
                + (slot - 1.0) * machine.slots().pitch().length();
      } else if (machine.slots().count() == 1) {
        expected = 0;
      } else {
        expected = (slot - (machine.slots().count() + 1) / 2.0) * machine.slots().pitch().length();
      }
      assertEquals(expected, centre, NEAR, "slot " + slot);
    }
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("drawings")
  void base_ofEachSimpleVise_standsAtTheRecommendedPlace(String name, Drawn drawn) {
    Vise vise = drawn.outcome().vise();
    Recommendation place = drawn.outcome().recommended().orElseThrow();
    if (!vise.simple() || place.handleTo() != Orientation.FRONT) {
      return;
    }
    // Handle to the front: u runs toward −y.
    double half = vise.base().width().length() / 2.0;
    List<Area> base = drawn.named("plan-part", "base");
    assertEquals(1, base.size());
    near(place.x() - half, base.get(0).left());
    near(place.x() + half, base.get(0).right());
    near(place.y() - vise.base().frontReach().length(), base.get(0).low());
    near(place.y() + vise.base().rearReach().length(), base.get(0).high());
    Area side = drawn.named("side-part", "base").get(0);
    near(0, side.low());
    near(vise.base().bedHeight(), side.high());
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("drawings")
  void dimension_ofEachPairing_spansTheFacesThatLimit(String name, Drawn drawn) {
    Recommendation place = drawn.outcome().recommended().orElseThrow();
    if (place.limit().isEmpty()) {
      assertFalse(drawn.groups().containsKey("plan-dimension"));
      return;
    }
    Limit limit = place.limit().get();
    Interval part = limit.partBox().along(limit.axis());
    Interval guard = limit.guardBox().along(limit.axis());
    boolean guardAbove = guard.lo() - part.hi() == limit.gap();
    double one = guardAbove ? part.hi() : part.lo();
    double other = guardAbove ? guard.lo() : guard.hi();
    boolean plan = limit.axis() != Axis.Z;
    List<Double> faces =
        drawn.faces(plan ? "plan" : "side", plan ? limit.axis() == Axis.X : limit.axis() == Axis.Y);
    near(Math.min(one, other), faces.get(0));
    near(Math.max(one, other), faces.get(1));
    // Down for what is left, up for what is hit.
    String value =
        (limit.gap() >= 0 ? "gap " : "overlap ")
            + BigDecimal.valueOf(Math.abs(limit.gap()))
                .divide(
                    BigDecimal.valueOf(Length.MM),
                    2,
                    limit.gap() >= 0 ? RoundingMode.FLOOR : RoundingMode.CEILING)
                .stripTrailingZeros()
                .toPlainString();
    assertTrue(drawn.texts().contains(value), value + " in " + drawn.texts());
    assertTrue(
        String.join(" ", drawn.texts())
            .contains(limit.part().name() + " to " + limit.guard().name()),
        drawn.texts().toString());
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("drawings")
  void limitingPart_ofEachPairing_isDrawnAtTheEndThatLimits(String name, Drawn drawn) {
    Recommendation place = drawn.outcome().recommended().orElseThrow();
    if (place.limit().isEmpty()
        || place.limit().get().opening() == JawEnd.ANY
        || place.limit().get().part().role() == PartRole.BOLT) {
      return;
    }
    Limit limit = place.limit().get();
    Interval part = limit.partBox().along(limit.axis());
    boolean guardAbove = limit.guardBox().along(limit.axis()).lo() - part.hi() == limit.gap();
    double face = guardAbove ? part.hi() : part.lo();
    // Only edges along u move with the jaws, so the axis is x or y.
    assertTrue(
        drawn.named("plan-part", limit.part().name()).stream()
            .map(
                area ->
                    limit.axis() == Axis.X
                        ? (guardAbove ? area.right() : area.left())
                        : (guardAbove ? area.high() : area.low()))
            .anyMatch(edge -> Math.abs(edge - face) < NEAR),
        "no " + limit.part().name() + " reaches " + face);
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("drawings")
  void overlap_ofEachPairing_isShownWhereSomethingIsHitAndNowhereElse(String name, Drawn drawn) {
    Recommendation place = drawn.outcome().recommended().orElseThrow();
    boolean hits = place.limit().filter(limit -> limit.gap() < 0).isPresent();
    assertEquals(hits, drawn.groups().containsKey("plan-overlap"));
    assertTrue(!hits || drawn.outcome().verdict() == Verdict.NO_PLACE);
    if (hits) {
      Limit limit = place.limit().get();
      Interval both = limit.partBox().y().meet(limit.guardBox().y()).orElseThrow();
      Area area = drawn.area("plan-overlap");
      near(both.lo(), area.low());
      near(both.hi(), area.high());
    }
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("drawings")
  void titleBlock_ofEachPairing_saysNamesVerdictAndCaution(String name, Drawn drawn) {
    String words = String.join(" ", drawn.texts());
    assertTrue(
        words.contains(drawn.outcome().vise().name() + " on " + drawn.outcome().machine().name()),
        words);
    // One word for one verdict, and each caveat beside it.
    assertTrue(words.contains(" " + drawn.outcome().verdict().code()), words);
    Map<Caveat, String> caveats =
        Map.of(
            Caveat.NOTHING_LISTED, "! nothing listed to hit",
            Caveat.HEADS_LEFT_OUT, "! heads left out",
            Caveat.OVERHANG, "! base overhangs the table by",
            Caveat.NOT_SETTABLE, "! no room to tap it square");
    caveats.forEach(
        (caveat, said) ->
            assertEquals(drawn.outcome().caveats().contains(caveat), words.contains(said), said));
    assertTrue(words.contains("Does not replace the check on the machine."), words);
    assertTrue(words.contains("Lock out before reaching in."), words);
    assertTrue(
        words.contains("clearance asked: 6.35 mm") || words.contains("clearance asked: 6 mm"),
        words);
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("drawings")
  void bolts_ofEachPairing_bearTheirThread(String name, Drawn drawn) {
    Recommendation place = drawn.outcome().recommended().orElseThrow();
    boolean clamped = place.fastening().clamped();
    assertEquals(clamped ? 2 : 0, drawn.named("plan-part", "clamps").size());
    String thread = clamped ? "M" : ThreadWords.of(place.thread());
    assertTrue(
        drawn
            .groups()
            .get("plan-bolt-1")
            .getElementsByTagName("title")
            .item(0)
            .getTextContent()
            .startsWith(thread));
  }

  /** Each tape measure ends at the table's edge and at what the card names. */
  @Test
  void tapes_onCards_goFromTheEdgesToTheReferences() throws Exception {
    int drawn = 0;
    for (String shop : List.of("inputs/demo", "src/test/resources/org/jawroom/golden/example-2")) {
      for (Drawn card : Drawn.onCards(Drawn.shop(shop), 258, 205)) {
        Recommendation place = card.outcome().recommended().orElseThrow();
        Machine machine = card.outcome().machine();
        Vise vise = card.outcome().vise();
        boolean upright = place.handleTo().uAxis() == Axis.Y;
        double half = vise.simple() ? vise.base().width().length() / 2.0 : 0;
        Area x = card.line("plan-tape-x");
        Area y = card.line("plan-tape-y");
        double near = 1e-3 / card.scale();
        double left = place.x() - (upright ? half : 0) + machine.tableLength() / 2.0;
        double front = place.y() - (upright ? 0 : half) + machine.tableWidth() / 2.0;
        if (left > 20 / card.scale()) {
          assertEquals(-machine.tableLength() / 2.0, x.left(), near);
          assertEquals(left - machine.tableLength() / 2.0, x.right(), near);
          drawn++;
        }
        if (front > 20 / card.scale()) {
          assertEquals(-machine.tableWidth() / 2.0, y.low(), near);
          assertEquals(front - machine.tableWidth() / 2.0, y.high(), near);
          drawn++;
        }
        assertTrue(card.texts().contains(figure(left)) || left < 0, card.texts() + figure(left));
      }
    }
    assertTrue(drawn > 150, "only " + drawn);
  }

  private static String figure(double length) {
    return BigDecimal.valueOf(length / Length.MM)
        .setScale(1, RoundingMode.HALF_UP)
        .stripTrailingZeros()
        .toPlainString();
  }

  /** Whoever reads a screw's name where the handle swings would take that place for the screw's. */
  @ParameterizedTest(name = "{0}")
  @MethodSource("drawings")
  void handle_ofEachPairing_bearsNoScrewsNameInsteadOfItsOwn(String name, Drawn drawn) {
    List<String> texts = drawn.textsIn("plan", "handle");
    assertTrue(
        texts.contains("handle") || texts.stream().noneMatch(text -> text.startsWith("screw")),
        texts::toString);
  }

  /**
   * The same for shops of every kind: slots along y, clutter, inches, shape parts, both jaws
   * moving. Left out are tables so full of boxes that no room is left for words, and worlds made to
   * touch, of nanometres or of 100 m, which no sheet shows.
   */
  @ParameterizedTest
  @EnumSource(
      value = RandomShops.Profile.class,
      mode = EnumSource.Mode.MATCH_NONE,
      names = {"SIXTEEN_BOXES.*", "TOUCHING.*", "TINY.*", "HUGE.*"})
  void drawings_ofRandomShops_holdTheSame(RandomShops.Profile profile) throws Exception {
    Shop shop = RandomShops.shop(profile, 4711);
    for (Drawn drawn : Drawn.all(shop)) {
      String name = drawn.outcome().machine().name() + " × " + drawn.outcome().vise().name();
      try {
        views_ofEachPairing_areToOneScale(name, drawn);
        dimension_ofEachPairing_spansTheFacesThatLimit(name, drawn);
        limitingPart_ofEachPairing_isDrawnAtTheEndThatLimits(name, drawn);
        overlap_ofEachPairing_isShownWhereSomethingIsHitAndNowhereElse(name, drawn);
      } catch (AssertionError wrong) {
        throw new AssertionError(name + " of " + ShopCsv.text(shop), wrong);
      }
    }
  }

  private static void near(double expected, double found) {
    assertEquals(expected, found, NEAR);
  }
}
