package org.jawroom.plausibility;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.jawroom.reference.BigShop;
import org.jawroom.reference.RandomShops;
import org.jawroom.reference.ShopCsv;
import org.jawroom.shop.Machine;
import org.jawroom.shop.Shop;
import org.jawroom.shop.Vise;
import org.junit.jupiter.api.Test;

/** The quick look for bases that must hang over, against the plain one. */
class OverhangTwinTest {

  @Test
  void warnings_ofRandomShops_areThoseOfThePlainLook() {
    int told = 0;
    for (RandomShops.Profile profile : RandomShops.Profile.values()) {
      for (long seed = 0; seed < 120; seed++) {
        told += compare(RandomShops.shop(profile, seed), profile + " seed " + seed);
      }
    }
    told += compare(BigShop.shop(40, 40, 3), "large");
    assertTrue(told > 50, "so few warnings hold nothing: " + told);
  }

  private static int compare(Shop shop, String which) {
    int told = 0;
    for (Machine machine : shop.machines()) {
      OverhangWarnings overhangs = new OverhangWarnings(machine);
      for (Vise vise : shop.vises()) {
        Optional<Warning> plain = SimpleOverhangs.of(machine, vise);
        assertEquals(plain, overhangs.of(vise), () -> which + "\n" + ShopCsv.text(shop));
        told += plain.isPresent() ? 1 : 0;
      }
    }
    return told;
  }
}
