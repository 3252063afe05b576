package org.jawroom.reference.random;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.reference.model.RefMount;
import org.jawroom.reference.model.RefSlots;
import org.jawroom.reference.random.RandomShops.Profile;
import org.jawroom.reference.solve.ReferenceOutcome;
import org.jawroom.reference.solve.ReferenceOutcome.Place;
import org.jawroom.reference.solve.ReferencePairing;
import org.jawroom.shop.Settings;
import org.jawroom.shop.Shop;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.vise.Vise;
import org.junit.jupiter.api.Test;

class RandomShopsTest {

  /** Cases that comparisons with the reference mean little without. */
  private static final List<String> CASES =
      List.of(
          "clamps",
          "smaller thread",
          "settable",
          "not settable",
          "bolted before roomier clamps",
          "settable before better",
          "measure with a usable opening",
          "limited by a settable opening",
          "limited without a settable opening",
          "hand gap");

  @Test
  void shop_sameSeed_sameShop() {
    for (Profile profile : Profile.values()) {
      assertEquals(RandomShops.shop(profile, 7), RandomShops.shop(profile, 7));
    }
  }

  @Test
  void shops_ofAllProfiles_bringEveryVerdictAndCase() {
    Map<String, Integer> counts = new TreeMap<>();
    for (Profile profile : Profile.values()) {
      for (long seed = 0; seed < 60; seed++) {
        Shop shop = RandomShops.shop(profile, seed);
        count(shop.settings(), RandomShops.machine(shop), RandomShops.vise(shop), counts);
      }
    }
    for (Verdict verdict : Verdict.values()) {
      assertTrue(counts.getOrDefault(verdict.code(), 0) >= 20, () -> verdict + ": " + counts);
    }
    for (String one : CASES) {
      assertTrue(counts.getOrDefault(one, 0) >= 10, () -> one + " is rare: " + counts);
    }
  }

  private static void count(
      Settings settings, Machine machine, Vise vise, Map<String, Integer> counts) {
    ReferenceOutcome outcome = ReferencePairing.solve(settings, machine, vise);
    count(outcome.verdict().code(), true, counts);
    count(
        "measure with a usable opening",
        outcome.verdict() == Verdict.MEASURE && outcome.usable().isPresent(),
        counts);
    if (outcome.recommended().isEmpty() || outcome.recommended().get().margin().isEmpty()) {
      return;
    }
    Place place = outcome.recommended().get();
    long margin = place.margin().getAsLong();
    if (margin < 0) {
      return;
    }
    boolean limited = outcome.verdict() == Verdict.LIMITED;
    boolean clamps = place.mount().equals(RefMount.CLAMPS);
    count("clamps", clamps, counts);
    count("settable", place.settable(), counts);
    count("not settable", !place.settable(), counts);
    count("hand gap", place.handGap().isPresent(), counts);
    count("limited without a settable opening", limited && !place.settable(), counts);
    if (place.thread().isPresent()) {
      long own = RefSlots.thread(machine.slots().width().length());
      count("smaller thread", place.thread().getAsLong() < own, counts);
    }
    if (vise.strapFlange() && !clamps) {
      Vise unbolted = vise.toBuilder().mounts(List.of()).build();
      ReferenceOutcome clamped = ReferencePairing.solve(settings, machine, unbolted);
      boolean same = clamped.verdict() == outcome.verdict() && !limited;
      count(
          "bolted before roomier clamps",
          same && clamped.bestMargin().getAsLong() > margin,
          counts);
    }
    if (place.settable() && settings.tapRoom() > 0) {
      ReferenceOutcome untapped =
          ReferencePairing.solve(settings.toBuilder().tapRoom(0).build(), machine, vise);
      count(
          "limited by a settable opening",
          limited && !untapped.usable().equals(outcome.usable()),
          counts);
      Place better = untapped.recommended().get();
      count(
          "settable before better",
          !limited
              && (better.reachShortfall() < place.reachShortfall()
                  || better.margin().getAsLong() > margin),
          counts);
    }
  }

  private static void count(String name, boolean met, Map<String, Integer> counts) {
    counts.merge(name, met ? 1 : 0, Integer::sum);
  }
}
