package org.jawroom.reference.agree;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.function.Supplier;
import org.jawroom.clearance.Setup;
import org.jawroom.fixture.ShopCsv;
import org.jawroom.geometry.Length;
import org.jawroom.placement.pairing.Model;
import org.jawroom.reference.random.RandomShops;
import org.jawroom.reference.random.RandomShops.Profile;
import org.jawroom.reference.solve.ReferencePairing;
import org.jawroom.shop.Settings;
import org.jawroom.shop.Shop;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.vise.Vise;
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
    int awkward = 0;
    for (Profile profile : Profile.values()) {
      for (long seed = FIRST; seed < FIRST + SEEDS; seed++) {
        Shop shop = RandomShops.shop(profile, seed);
        Settings settings = shop.settings();
        Machine machine = RandomShops.machine(shop);
        Vise vise = RandomShops.vise(shop);
        String name = profile + " seed " + seed;
        boolean plain = ReferencePairing.isClearOnRiser(settings, machine, vise, 0);
        for (long height : HEIGHTS) {
          Model model = Model.of(settings, machine, vise, Setup.onRiser(height));
          boolean judged = model.blanks().isEmpty() && model.hasPlaces();
          boolean clear = ReferencePairing.isClearOnRiser(settings, machine, vise, height);
          boolean fits = ReferencePairing.fitsOnRiser(settings, machine, vise, height);
          Supplier<String> text = () -> name + " on " + height + "\n" + ShopCsv.text(shop);

          assertEquals(clear, judged && model.isClear(), text);
          assertEquals(fits, judged && model.isClearWithHandRoom(), text);
          helped += clear && !plain ? 1 : 0;
          harmed += plain && !clear ? 1 : 0;
          awkward += clear && !fits ? 1 : 0;
        }
      }
    }
    assertTrue(
        helped > 0 && harmed > 0 && awkward > 0,
        helped + " helped, " + harmed + " harmed, " + awkward + " awkward");
  }
}
