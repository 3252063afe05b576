package org.jawroom.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumMap;
import java.util.Map;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.reference.RandomShops.Profile;
import org.jawroom.shop.Shop;
import org.junit.jupiter.api.Test;

class RandomShopsTest {

  @Test
  void shop_sameSeed_sameShop() {
    for (Profile profile : Profile.values()) {
      assertEquals(RandomShops.shop(profile, 7), RandomShops.shop(profile, 7));
    }
  }

  @Test
  void shops_ofAllProfiles_bringEveryVerdict() {
    Map<Verdict, Integer> counts = new EnumMap<>(Verdict.class);
    for (Profile profile : Profile.values()) {
      for (long seed = 0; seed < 60; seed++) {
        Shop shop = RandomShops.shop(profile, seed);
        ReferenceOutcome outcome =
            ReferencePairing.solve(
                shop.settings(), RandomShops.machine(shop), RandomShops.vise(shop));
        counts.merge(outcome.verdict(), 1, Integer::sum);
      }
    }
    for (Verdict verdict : Verdict.values()) {
      assertTrue(counts.getOrDefault(verdict, 0) >= 3, () -> verdict + " is rare: " + counts);
    }
  }
}
