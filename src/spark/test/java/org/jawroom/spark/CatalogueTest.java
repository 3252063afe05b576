package org.jawroom.spark;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.jawroom.placement.bolting.PreparedMachine;
import org.jawroom.placement.pairing.Pairing;
import org.jawroom.reference.random.BigShop;
import org.jawroom.shop.Shop;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The outcomes do not depend on how many vises are kept prepared. */
class CatalogueTest {
  private static final Shop SHOP = BigShop.shop(12, 20, 3);

  @ParameterizedTest
  @ValueSource(ints = {0, 7, 20, 100})
  void solved_anyNumberKept_isThePairing(int kept) {
    Catalogue catalogue = Catalogue.of(SHOP, kept);
    for (int machine = 0; machine < SHOP.machines().size(); machine++) {
      PreparedMachine prepared = catalogue.machine(machine);
      for (int vise = 0; vise < SHOP.vises().size(); vise++) {
        assertEquals(
            Pairing.solve(SHOP.settings(), SHOP.machines().get(machine), SHOP.vises().get(vise)),
            catalogue.solved(prepared, vise).outcome());
      }
    }
  }
}
