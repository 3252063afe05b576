package org.jawroom.advice.remedy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jawroom.advice.Advice;
import org.jawroom.advice.Advisor;
import org.jawroom.advice.Applied;
import org.jawroom.clearance.Setup;
import org.jawroom.fixture.ShopCsv;
import org.jawroom.geometry.Length;
import org.jawroom.geometry.MonotoneSearch;
import org.jawroom.placement.pairing.Model;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.pairing.Pairing;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.reference.random.RandomShops;
import org.jawroom.reference.random.RandomShops.Profile;
import org.jawroom.reference.solve.ReferencePairing;
import org.jawroom.shop.Settings;
import org.jawroom.shop.Shop;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.vise.Vise;
import org.junit.jupiter.api.Test;

/**
 * Every remedy, applied to the inputs by {@link Applied} and solved again by the solver and by the
 * reference, makes the pairing fit; 0.05 mm less does not. {@code -Dremedies.seeds=500} tries more
 * shops.
 */
class RemedyHonestyTest {
  private static final int SEEDS = Integer.getInteger("remedies.seeds", 40);
  private static final long LESS = Length.MM / 20;

  private final Map<RemedyKind, Integer> seen = new EnumMap<>(RemedyKind.class);

  private int decided;

  @Test
  void remedies_randomShops_fitWhenAppliedAndNotWithLess() {
    for (Profile profile : Profile.values()) {
      for (long seed = 0; seed < SEEDS; seed++) {
        Shop shop = RandomShops.shop(profile, seed);
        Outcome outcome =
            Pairing.solve(shop.settings(), RandomShops.machine(shop), RandomShops.vise(shop));
        Advice advice = Advisor.advise(shop.settings(), outcome.machine(), outcome.vise());
        for (Remedy remedy : advice.remedies()) {
          check(
              shop,
              outcome,
              remedy,
              profile + " seed " + seed + " " + remedy + "\n" + ShopCsv.text(shop));
        }
        if (outcome.verdict() == Verdict.FITS) {
          assertEquals(List.of(), advice.remedies());
        }
      }
    }
    assertTrue(decided > 500, "decided by the reference, too: " + decided);
    assertTrue(seen.keySet().size() >= 8, "only " + seen);
  }

  private void check(Shop shop, Outcome outcome, Remedy remedy, String input) {
    seen.merge(remedy.kind(), 1, Integer::sum);
    Settings settings = shop.settings();
    Machine machine = outcome.machine();
    Vise vise = outcome.vise();
    assertEquals(remedy.kind().isMeasured(), remedy.amount().isPresent(), input);
    assertTrue(remedy.place().limit().map(limit -> limit.margin() >= 0).orElse(true), input);
    if (remedy.kind() == RemedyKind.RAISE) {
      long height = remedy.amount().getAsLong();
      boolean hand = outcome.verdict() == Verdict.AWKWARD;
      assertTrue(serves(settings, machine, vise, height, hand), input);
      assertTrue(servesTheReference(settings, machine, vise, height, hand), input);
      assertTrue(
          !servesTheReference(settings, machine, vise, height - MonotoneSearch.GRAIN, hand), input);
      // No smaller amount serves: tested on a fine grid just below, a coarse one farther down.
      for (long less = MonotoneSearch.GRAIN;
          less <= 5 * MonotoneSearch.GRAIN && less < height;
          less += MonotoneSearch.GRAIN) {
        assertTrue(!serves(settings, machine, vise, height - less, hand), input);
      }
      for (long lower = Length.MM; lower < height; lower += Length.MM) {
        assertTrue(!serves(settings, machine, vise, lower, hand), input);
      }
      return;
    }
    Applied applied = Applied.of(settings, machine, vise, remedy, 0);
    assertEquals(remedy.then(), applied.solve().verdict(), input);
    Verdict reference =
        ReferencePairing.solve(applied.settings(), applied.machine(), applied.vise()).verdict();
    // The reference decides nothing in spite of a blank.
    assertTrue(reference == remedy.then() || reference == Verdict.UNKNOWN, input + reference);
    decided += reference == remedy.then() ? 1 : 0;
    if (remedy.kind().isMeasured() && remedy.amount().getAsLong() > LESS) {
      Applied less = Applied.of(settings, machine, vise, remedy, LESS);
      Verdict then = less.solve().verdict();
      assertTrue(
          outcome.verdict() == Verdict.AWKWARD ? then != Verdict.FITS : !then.isClear(), input);
    }
  }

  /** What is awkward is to fit, with room for the hand; anything else is to be clear. */
  private static boolean serves(
      Settings settings, Machine machine, Vise vise, long riser, boolean hand) {
    Model raised = Model.of(settings, machine, vise, Setup.onRiser(riser));
    return hand ? raised.isClearWithHandRoom() : raised.isClear();
  }

  private static boolean servesTheReference(
      Settings settings, Machine machine, Vise vise, long riser, boolean hand) {
    return hand
        ? ReferencePairing.fitsOnRiser(settings, machine, vise, riser)
        : ReferencePairing.isClearOnRiser(settings, machine, vise, riser);
  }
}
