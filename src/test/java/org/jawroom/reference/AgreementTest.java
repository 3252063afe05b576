package org.jawroom.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jawroom.placement.Outcome;
import org.jawroom.placement.Pairing;
import org.jawroom.placement.Recommendation;
import org.jawroom.reference.RandomShops.Profile;
import org.jawroom.reference.ReferenceOutcome.Limiting;
import org.jawroom.reference.ReferenceOutcome.Place;
import org.jawroom.shop.Shop;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * The solver and the reference on the same random shops: everything told must be the same, to the
 * half nanometre. {@code -Dagreement.seeds=1000} tries more of them, {@code -Dagreement.first=5000}
 * others.
 */
class AgreementTest {
  private static final int SEEDS = Integer.getInteger("agreement.seeds", 60);
  private static final long FIRST = Long.getLong("agreement.first", 0);

  @ParameterizedTest
  @EnumSource(Profile.class)
  void solve_randomShops_asTheReferenceHasIt(Profile profile) {
    for (long seed = FIRST; seed < FIRST + SEEDS; seed++) {
      Shop shop = RandomShops.shop(profile, seed);
      String text = profile + " seed " + seed + "\n" + ShopCsv.text(shop);
      ReferenceOutcome expected =
          ReferencePairing.solve(
              shop.settings(), RandomShops.machine(shop), RandomShops.vise(shop));
      Outcome actual = solve(shop, text);

      assertEquals(told(expected), told(actual, expected), () -> text);
    }
  }

  private static Outcome solve(Shop shop, String text) {
    try {
      return Pairing.solve(shop.settings(), RandomShops.machine(shop), RandomShops.vise(shop));
    } catch (RuntimeException e) {
      throw new AssertionError(text, e);
    }
  }

  private static String told(ReferenceOutcome outcome) {
    Map<String, Object> told = new LinkedHashMap<>();
    told.put("verdict", outcome.verdict());
    told.put("best", outcome.bestMargin());
    told.put("usable", outcome.usable().map(u -> List.of(u.printed().lo(), u.printed().hi())));
    told.put("room", outcome.roomOverJaws());
    told.put("load", outcome.loadLeft());
    told.put("missing", outcome.missing());
    if (outcome.recommended().isPresent()) {
      Place place = outcome.recommended().get();
      ToldPlace.put(told, place);
      told.put("overhang", place.overhang());
    }
    return told.toString();
  }

  private static String told(Outcome outcome, ReferenceOutcome expected) {
    Map<String, Object> told = new LinkedHashMap<>();
    told.put("verdict", outcome.verdict());
    told.put("best", outcome.bestMargin());
    told.put("usable", outcome.usableOpening().map(u -> List.of(u.lo(), u.hi())));
    told.put("room", outcome.roomOverJaws());
    told.put("load", outcome.loadLeft());
    told.put("missing", outcome.missing());
    if (outcome.recommended().isPresent()) {
      Recommendation place = outcome.recommended().get();
      ToldPlace.put(told, place, namesAnEdge(expected));
      told.put("overhang", place.overhang());
    }
    return told.toString();
  }

  /** Whether the model says which edge faces the guard; where both do equally, it does not. */
  private static boolean namesAnEdge(ReferenceOutcome expected) {
    return expected.recommended().flatMap(Place::limiting).flatMap(Limiting::opening).isPresent();
  }
}
