package org.jawroom.placement.pairing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import org.jawroom.fixture.TestShop;
import org.jawroom.shop.Shop;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A base that hangs over by more than a quarter of its length. The table ends 100 mm before its one
 * slot, over which the vise stands with its fixed jaw's face, so that a front reach of 150 mm hangs
 * over by 50.
 */
class OverhangCaveatTest {
  @TempDir Path folder;

  @ParameterizedTest
  @CsvSource({
    // A quarter of 200, touching: not more than that.
    "50, false",
    "49.999999, true",
    "50.000001, false",
    // Some value leaves a base of which 50 is more than a quarter.
    "40..50, true",
    "50..60, false",
  })
  void caveats_ofABaseThatHangsOver(String rearReach, boolean said) throws Exception {
    Shop shop =
        TestShop.in(folder)
            .machine("mill", "table_width", "200", "slot_count", "1", "rear_gap", "400")
            .vise(
                "vise",
                "turns",
                "front",
                "base_width",
                "120",
                "rear_reach",
                rearReach,
                "front_reach",
                "150",
                "fixed_jaw_thickness",
                "20",
                "moving_jaw_thickness",
                "20",
                "rear_projection_closed",
                "none",
                "rear_projection_open",
                "none",
                "front_projection_closed",
                "none",
                "front_projection_open",
                "none",
                "handle_radius",
                "none",
                "bolt_u",
                "0",
                "bolt_spacing",
                "100",
                "bolt_hole_u",
                "12",
                "bolt_hole_v",
                "12")
            .read()
            .shop()
            .orElseThrow();
    Outcome outcome = Pairing.solve(shop.settings(), shop.machines().get(0), shop.vises().get(0));
    assertEquals(Verdict.FITS, outcome.verdict());
    assertEquals(said, outcome.caveats().contains(Caveat.OVERHANG));
  }
}
