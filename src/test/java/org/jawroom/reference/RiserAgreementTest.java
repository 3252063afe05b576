package org.jawroom.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.jawroom.clearance.Setup;
import org.jawroom.geometry.Length;
import org.jawroom.placement.pairing.Model;
import org.jawroom.reference.RandomShops.Profile;
import org.jawroom.shop.Machine;
import org.jawroom.shop.Settings;
import org.jawroom.shop.Shop;
import org.jawroom.shop.Vise;
import org.junit.jupiter.api.Test;

/** Compares the solver with the reference for a vise on a riser plate. */
class RiserAgreementTest {
  private static final int SEEDS = Integer.getInteger("agreement.seeds", 25);
  private static final long FIRST = Long.getLong("agreement.first", 0);

  /** From just off the table up to the greatest riser of 200 mm. */
  private static final long[] HEIGHTS = {2, 10 * Length.MM, 45 * Length.MM, 200 * Length.MM};

  @Test
  void fits_randomShopsOnRisers_asTheReferenceHasIt() {
    int helped = 0;
    int harmed = 0;
    for (Profile profile : Profile.values()) {
      for (long seed = FIRST; seed < FIRST + SEEDS; seed++) {
        Shop shop = RandomShops.shop(profile, seed);
        Settings settings = shop.settings();
        Machine machine = RandomShops.machine(shop);
        Vise vise = RandomShops.vise(shop);
        String name = profile + " seed " + seed;
        boolean plain = fits(settings, machine, vise, 0);
        for (long height : HEIGHTS) {
          boolean raised = fits(settings, machine, vise, height);
          assertEquals(
              ReferencePairing.fitsOnRiser(settings, machine, vise, height),
              raised,
              () -> name + " on " + height + "\n" + ShopCsv.text(shop));
          helped += raised && !plain ? 1 : 0;
          harmed += plain && !raised ? 1 : 0;
        }
      }
    }
    assertTrue(helped > 0 && harmed > 0, helped + " helped, " + harmed + " harmed");
  }

  private static boolean fits(Settings settings, Machine machine, Vise vise, long height) {
    Model model = Model.of(settings, machine, vise, Setup.onRiser(height));
    return model.blanks().isEmpty() && model.hasPlaces() && model.isClear();
  }
}
