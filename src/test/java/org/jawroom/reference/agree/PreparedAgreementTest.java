package org.jawroom.reference.agree;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.stream.LongStream;
import org.jawroom.fixture.ShopCsv;
import org.jawroom.placement.ShopPairings;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.reference.random.RandomShops;
import org.jawroom.reference.random.RandomShops.Profile;
import org.jawroom.reference.solve.ReferenceOutcome;
import org.jawroom.reference.solve.ReferencePairing;
import org.jawroom.shop.Shop;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Shops of several machines and vises, prepared together as for a whole shop, with every pairing
 * compared with the reference, which prepares nothing: no state may leak from one pairing into
 * another. {@code -Dprepared.seeds=2000} tries more.
 */
class PreparedAgreementTest {
  private static final int SEEDS = Integer.getInteger("prepared.seeds", 16);
  private static final int EACH = 3;

  @ParameterizedTest
  @EnumSource(Profile.class)
  void solve_shopsPreparedTogether_asTheReferenceHasIt(Profile profile) {
    int seeds = profile.isCrowded() ? Math.max(1, SEEDS / 8) : SEEDS;
    LongStream.range(0, seeds).parallel().forEach(seed -> compare(profile, seed));
  }

  private static void compare(Profile profile, long seed) {
    Shop shop = RandomShops.shop(profile, seed, EACH);
    ShopPairings pairings = ShopPairings.of(shop);
    // Backwards, so that the order of solving differs from that of preparing.
    for (int i = EACH - 1; i >= 0; i--) {
      for (int j = EACH - 1; j >= 0; j--) {
        String pairing = " seed " + seed + ", machine " + i + ", vise " + j + "\n";
        ReferenceOutcome expected =
            ReferencePairing.solve(shop.settings(), shop.machines().get(i), shop.vises().get(j));
        Outcome actual = pairings.solve(i, j);
        assertEquals(
            AgreementTest.describe(expected),
            AgreementTest.describe(actual, expected),
            () -> profile + pairing + ShopCsv.text(shop));
      }
    }
  }
}
