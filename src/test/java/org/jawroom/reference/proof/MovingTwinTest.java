package org.jawroom.reference.proof;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumSet;
import java.util.Set;
import org.jawroom.fixture.ShopCsv;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.reference.model.RefLevel;
import org.jawroom.reference.model.RefModel;
import org.jawroom.reference.random.RandomShops;
import org.jawroom.reference.random.RandomShops.Profile;
import org.jawroom.reference.solve.ReferenceOutcome;
import org.jawroom.reference.solve.ReferenceOutcome.Place;
import org.jawroom.reference.solve.ReferencePairing;
import org.jawroom.reference.space.Span;
import org.jawroom.shop.Settings;
import org.jawroom.shop.Shop;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.vise.Vise;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Sweep against simulated motion: what the reference calls clear is moved through all positions.
 */
class MovingTwinTest {
  private static final Set<Verdict> CLEAR =
      EnumSet.of(Verdict.FITS, Verdict.AWKWARD, Verdict.LIMITED);

  @ParameterizedTest
  @EnumSource(Profile.class)
  void watch_clearPlaces_leastMarginIsTheComputedOne(Profile profile) {
    int watched = 0;
    for (long seed = 0; seed < 25 || watched == 0 && seed < 400; seed++) {
      Shop shop = RandomShops.shop(profile, seed);
      Machine machine = RandomShops.machine(shop);
      Vise vise = RandomShops.vise(shop);
      ReferenceOutcome outcome = ReferencePairing.solve(shop.settings(), machine, vise);
      boolean known =
          RefModel.at(RefLevel.WORST, shop.settings(), machine, vise, false).missing.isEmpty();
      if (!known || !CLEAR.contains(outcome.verdict())) {
        continue;
      }
      Settings settings =
          outcome.verdict() == Verdict.FITS
              ? shop.settings()
              : ReferencePairing.withoutHandRoom(shop.settings());
      Place place = outcome.recommended().get();
      Span openings = outcome.usable().get().printed();
      String text = profile + " seed " + seed + " " + place + "\n" + ShopCsv.text(shop);

      MovingTwin.Found found =
          MovingTwin.watch(
              settings, machine, vise, place.turn(), place.mount(), place.x(), place.y(), openings);

      assertEquals(
          place.margin().orElse(Long.MAX_VALUE), found.margin(), () -> found.where() + "\n" + text);
      watched++;
      if (place.noseNotBelow().isPresent()) {
        long low = place.noseNotBelow().getAsLong();
        long top = machine.noseMax().length();
        long least = nose(shop, place, openings, low, top).margin();
        assertTrue(least >= 0, () -> "nose " + least + "\n" + text);
        if (low > machine.noseMin().length()) {
          long below = nose(shop, place, openings, low - 1, low - 1).margin();
          assertTrue(below < 0, () -> "nose could go lower\n" + text);
        }
      }
    }
    int all = watched;
    assertTrue(all > 0 || profile == Profile.BLANKS, () -> "nothing watched for " + profile);
  }

  private static MovingTwin.Found nose(Shop shop, Place place, Span openings, long low, long high) {
    return MovingTwin.watchNose(
        shop.settings(),
        RandomShops.machine(shop),
        RandomShops.vise(shop),
        place.turn(),
        place.mount(),
        place.x(),
        place.y(),
        openings,
        low,
        high);
  }
}
