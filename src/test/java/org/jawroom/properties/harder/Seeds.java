package org.jawroom.properties.harder;

import org.jawroom.fixture.ShopCsv;
import org.jawroom.reference.random.RandomShops;
import org.jawroom.reference.random.RandomShops.Profile;
import org.jawroom.shop.Shop;

/** The random shops that the properties are tried on. */
final class Seeds {
  private static final int COUNT = Integer.getInteger("properties.seeds", 6);
  private static final long FIRST = Long.getLong("properties.first", 0);

  /** What must hold of a shop; throws if it does not. */
  @FunctionalInterface
  interface Property {
    void check(long seed, ShopDraft shop) throws Exception;
  }

  private Seeds() {}

  /** Tries {@code property} on every seed; a failure prints profile, seed and the shop as CSV. */
  static void each(Profile profile, Property property) {
    for (long seed = FIRST; seed < FIRST + COUNT; seed++) {
      Shop shop = RandomShops.shop(profile, seed);
      try {
        property.check(seed, ShopDraft.of(shop));
      } catch (Exception | AssertionError e) {
        String text = profile + " seed " + seed + ": " + e.getMessage() + "\n" + ShopCsv.text(shop);
        throw new AssertionError(text, e);
      }
    }
  }
}
