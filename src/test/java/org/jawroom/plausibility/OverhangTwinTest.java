package org.jawroom.plausibility;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.jawroom.fixture.ShopCsv;
import org.jawroom.plausibility.warning.Warning;
import org.jawroom.reference.random.BigShop;
import org.jawroom.reference.random.RandomShops;
import org.jawroom.shop.Shop;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.vise.Vise;
import org.junit.jupiter.api.Test;

/** The fast search for bases that must hang over, against its slow twin. */
class OverhangTwinTest {

  @Test
  void warnings_ofRandomShops_areThoseOfTheSlowTwin() {
    int warned = 0;
    for (RandomShops.Profile profile : RandomShops.Profile.values()) {
      for (long seed = 0; seed < 120; seed++) {
        warned += compare(RandomShops.shop(profile, seed), profile + " seed " + seed);
      }
    }
    Shop large = BigShop.shop(40, 40, 3);
    warned += compare(large, "large");
    for (Machine machine : large.machines()) {
      warned += compare(List.of(machine), large, "large, " + machine.name());
    }
    assertTrue(warned > 50, "too few warnings to prove anything: " + warned);
  }

  private static int compare(Shop shop, String which) {
    return compare(shop.machines(), shop, which);
  }

  private static int compare(List<Machine> machines, Shop shop, String which) {
    int warned = 0;
    List<OverhangWarnings> overhangs = machines.stream().map(OverhangWarnings::new).toList();
    for (Vise vise : shop.vises()) {
      Optional<Warning> slow = SimpleOverhangs.of(machines, vise);
      assertEquals(
          slow, OverhangWarnings.of(overhangs, vise), () -> which + "\n" + ShopCsv.text(shop));
      warned += slow.isPresent() ? 1 : 0;
    }
    return warned;
  }
}
