package org.jawroom.reference.agree;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumSet;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.jawroom.advice.Advisor;
import org.jawroom.advice.remedy.Remedy;
import org.jawroom.advice.remedy.RemedyKind;
import org.jawroom.fixture.ShopCsv;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.reference.model.RefModel;
import org.jawroom.reference.random.RandomShops;
import org.jawroom.reference.random.RandomShops.Profile;
import org.jawroom.reference.solve.RefRemedies;
import org.jawroom.reference.solve.ReferencePairing;
import org.jawroom.shop.Settings;
import org.jawroom.shop.Shop;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.vise.Vise;
import org.junit.jupiter.api.Test;

/**
 * Compares the remedies of random pairings, their amounts and the verdicts after them with those of
 * {@link RefRemedies}; {@code -Dremedies.twin=100} tries more seeds.
 */
class RemedyAgreementTest {
  private static final int SEEDS = Integer.getInteger("remedies.twin", 6);
  private static final long FIRST = Long.getLong("agreement.first", 0);
  private static final Set<Verdict> HELPED =
      EnumSet.complementOf(EnumSet.of(Verdict.FITS, Verdict.UNKNOWN));

  @Test
  void remedies_randomShops_asTheReferenceHasThem() {
    Map<String, Integer> counts = new TreeMap<>();
    for (Profile profile : Profile.values()) {
      int seeds = profile.isCrowded() ? 1 : SEEDS;
      for (long seed = FIRST; seed < FIRST + seeds; seed++) {
        compare(profile, seed, counts);
      }
    }
    for (RemedyKind kind : EnumSet.complementOf(EnumSet.of(RemedyKind.RAISE))) {
      boolean met = counts.keySet().stream().anyMatch(name -> name.startsWith(kind.code()));
      assertTrue(met, () -> kind + " is missing: " + counts);
    }
    for (String then : new String[] {"fits", "awkward"}) {
      assertTrue(counts.getOrDefault(then, 0) > 0, () -> then + " is missing: " + counts);
    }
  }

  private static void compare(Profile profile, long seed, Map<String, Integer> counts) {
    Shop shop = RandomShops.shop(profile, seed);
    Settings settings = shop.settings();
    Machine machine = RandomShops.machine(shop);
    Vise vise = RandomShops.vise(shop);
    Verdict verdict = ReferencePairing.solve(settings, machine, vise).verdict();
    boolean blank = !new RefModel(settings, machine, vise, false).missing.isEmpty();
    if (blank || !HELPED.contains(verdict)) {
      return;
    }
    Map<String, String> expected = RefRemedies.of(settings, machine, vise, verdict);
    Map<String, String> actual = new TreeMap<>();
    for (Remedy remedy : Advisor.advise(settings, machine, vise).remedies()) {
      boolean box = remedy.guard().isPresent() && remedy.guard().get().side().isEmpty();
      if (remedy.kind() != RemedyKind.RAISE && !box) {
        String amount = remedy.amount().isPresent() ? remedy.amount().getAsLong() + " " : "";
        actual.put(remedy.name(), amount + remedy.then().code());
      }
    }
    assertEquals(
        expected,
        actual,
        () -> verdict + ", " + profile + " seed " + seed + "\n" + ShopCsv.text(shop));
    expected.forEach(
        (name, amountAndVerdict) -> {
          counts.merge(name, 1, Integer::sum);
          counts.merge(amountAndVerdict.replaceAll(".* ", ""), 1, Integer::sum);
        });
  }
}
