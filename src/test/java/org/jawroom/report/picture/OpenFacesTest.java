package org.jawroom.report.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.UnaryOperator;
import org.jawroom.geometry.Length;
import org.jawroom.report.Drawn;
import org.jawroom.report.Drawn.Area;
import org.jawroom.shop.Shop;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.machine.Side;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.vise.Base;
import org.jawroom.shop.vise.Vise;
import org.junit.jupiter.api.Test;

/** Where faces are drawn whose readings are known within bounds only, read back from an SVG. */
class OpenFacesTest {
  private static final double NEAR = 0.002 * Length.MM;
  private static final String KEY = "a face stands in here; solid: at worst";

  /** The pairing worked by hand: table 600 by 300, y travel 300, rear gap 50. */
  private static Drawn drawn(UnaryOperator<Machine> machine, UnaryOperator<Vise> vise)
      throws Exception {
    Shop shop = Drawn.shop("src/test/resources/org/jawroom/golden/example");
    List<Drawn> all =
        Drawn.all(
            new Shop(
                shop.settings(),
                List.of(machine.apply(shop.machines().get(0))),
                List.of(vise.apply(shop.vises().get(0))),
                List.of()));
    assertEquals(1, all.size());
    return all.get(0);
  }

  private static Drawn withRearGap(long from, long to) throws Exception {
    return drawn(
        machine -> machine.withGap(Side.REAR, Dimension.within(from, to)),
        UnaryOperator.identity());
  }

  /** The id of the only band that is drawn in the plan. */
  private static String band(Drawn drawn, String part) {
    List<String> bands =
        drawn.groups().keySet().stream()
            .filter(id -> id.startsWith("plan-" + part) && id.endsWith("-open"))
            .toList();
    assertEquals(1, bands.size(), drawn.groups().keySet().toString());
    return bands.get(0);
  }

  private static String edge(String band) {
    return band.replaceAll("-open$", "-edge");
  }

  @Test
  void band_ofAGapWithinBounds_reachesFromTheWorstFaceToTheBest() throws Exception {
    Drawn drawn = withRearGap(45 * Length.MM, 60 * Length.MM);
    String band = band(drawn, "guard");
    Area area = drawn.area(band);
    assertEquals((150 + 45) * Length.MM, area.low(), NEAR);
    // The view may end before the best face.
    assertTrue(area.high() <= (150 + 60) * Length.MM + NEAR && area.high() > area.low(), "" + area);
    Area edge = drawn.area(edge(band));
    assertEquals(area.low(), edge.low(), NEAR);
    assertEquals(edge.low(), edge.high(), NEAR);
    assertTrue(drawn.texts().contains(KEY), drawn.texts().toString());
  }

  @Test
  void band_ofAGapWithoutUpperEnd_reachesTheEndOfTheView() throws Exception {
    Drawn open = withRearGap(45 * Length.MM, Length.ENDLESS);
    Area area = open.area(band(open, "guard"));
    assertEquals((150 + 45) * Length.MM, area.low(), NEAR);
    assertEquals(open.named("plan", "rear cover").get(0).high(), area.high(), NEAR);
  }

  @Test
  void band_ofAPartEnd_liesWithinThePart() throws Exception {
    Drawn drawn =
        drawn(
            UnaryOperator.identity(),
            vise -> {
              Base base = vise.base();
              Dimension reach = Dimension.within(190 * Length.MM, 200 * Length.MM);
              return vise.withBase(
                  new Base(base.bedHeight(), base.width(), base.rearReach(), reach));
            });
    // The handle points to the front, so the front end of the base is at its lowest y.
    long y = drawn.outcome().recommended().orElseThrow().y();
    Area area = drawn.area("plan-part-1-low-open");
    assertEquals(y - 200 * Length.MM, area.low(), NEAR);
    assertEquals(y - 190 * Length.MM, area.high(), NEAR);
    assertEquals(area.low(), drawn.area("plan-part-1-low-edge").high(), NEAR);
    assertFalse(drawn.groups().containsKey("plan-part-1-high-open"));
  }

  @Test
  void bands_ofKnownReadings_areNone() throws Exception {
    Drawn drawn = drawn(UnaryOperator.identity(), UnaryOperator.identity());
    assertTrue(drawn.groups().keySet().stream().noneMatch(id -> id.endsWith("-open")));
    assertFalse(drawn.texts().contains(KEY));
  }
}
