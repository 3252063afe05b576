package org.jawroom.advice.blank;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumMap;
import java.util.Map;
import org.jawroom.advice.Advice;
import org.jawroom.advice.Advisor;
import org.jawroom.advice.ToleranceNeeded;
import org.jawroom.fixture.ShopCsv;
import org.jawroom.geometry.Length;
import org.jawroom.geometry.MonotoneSearch;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.pairing.Pairing;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.reference.random.RandomShops;
import org.jawroom.reference.random.RandomShops.Profile;
import org.jawroom.reference.solve.ReferencePairing;
import org.jawroom.shop.Shop;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.machine.Side;
import org.jawroom.shop.value.Column;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.value.Provenance;
import org.jawroom.shop.vise.Vise;
import org.junit.jupiter.api.Test;

/**
 * One gap of a fully known shop is blanked. The limit then found, typed in, makes the pairing fit;
 * 0.05 mm less does not.
 */
class BlankLimitsTest {
  private static final long LESS = Length.MM / 20;
  private static final Map<Side, Column> GAPS =
      Map.of(
          Side.FRONT,
          Column.FRONT_GAP,
          Side.REAR,
          Column.REAR_GAP,
          Side.LEFT,
          Column.LEFT_GAP,
          Side.RIGHT,
          Column.RIGHT_GAP);

  private final Map<Relation, Integer> seen = new EnumMap<>(Relation.class);

  @Test
  void limits_oneGapBlank_fitAtTheLimitAndNotBelow() {
    for (Profile profile : Profile.values()) {
      for (long seed = 0; seed < 25; seed++) {
        Shop shop = RandomShops.shop(profile, seed);
        for (Side side : Side.values()) {
          check(shop, side, profile + " seed " + seed + " " + side + "\n" + ShopCsv.text(shop));
        }
      }
    }
    assertTrue(seen.getOrDefault(Relation.AT_LEAST, 0) > 50, "" + seen);
    assertTrue(seen.getOrDefault(Relation.NEVER, 0) > 50, "" + seen);
  }

  private void check(Shop shop, Side side, String input) {
    Machine machine = RandomShops.machine(shop);
    Vise vise = RandomShops.vise(shop);
    if (!machine.gap(side).isKnown()) {
      return;
    }
    Machine blank = machine.withGap(side, Dimension.BLANK);
    Outcome outcome = Pairing.solve(shop.settings(), blank, vise);
    if (outcome.verdict() != Verdict.UNKNOWN || outcome.missing().size() != 1) {
      return;
    }
    Advice advice = Advisor.advise(shop.settings(), outcome.machine(), outcome.vise());
    BlankLimit limit = advice.limits().get(0);
    assertEquals(GAPS.get(side), limit.reading().column(), input);
    seen.merge(limit.relation(), 1, Integer::sum);
    switch (limit.relation()) {
      case AT_LEAST -> {
        long least = limit.limit().getAsLong();
        assertTrue(fits(shop, blank, vise, side, least), input);
        assertTrue(!fits(shop, blank, vise, side, least - LESS), input);
      }
      case NEVER -> assertTrue(!fits(shop, blank, vise, side, Length.LARGEST), input);
      case ALWAYS -> assertTrue(fits(shop, blank, vise, side, -Length.LARGEST), input);
      case AT_MOST -> throw new AssertionError("a gap helps when larger: " + input);
    }
  }

  private static boolean fits(Shop shop, Machine blank, Vise vise, Side side, long gap) {
    Machine filled = blank.withGap(side, Dimension.of(gap));
    return ReferencePairing.solve(shop.settings(), filled, vise).verdict() == Verdict.FITS;
  }

  @Test
  void toleranceNeeded_measurePairings_fitsAtItAndNotAbove() {
    int checked = 0;
    for (long seed = 0; seed < 400; seed++) {
      Shop shop = RandomShops.shop(Profile.TOLERANCES, seed);
      Machine machine = RandomShops.machine(shop);
      Vise vise = RandomShops.vise(shop);
      Outcome outcome = Pairing.solve(shop.settings(), machine, vise);
      if (outcome.verdict() == Verdict.MEASURE) {
        ToleranceNeeded needed =
            Advisor.advise(shop.settings(), outcome.machine(), outcome.vise())
                .toleranceNeeded()
                .orElseThrow();
        if (needed.machine().isPresent()) {
          checked++;
          long most = needed.machine().getAsLong();
          Provenance known = machine.provenance();
          assertTrue(
              Pairing.solve(
                      shop.settings(), machine.withProvenance(known.withTolerance(most)), vise)
                  .verdict()
                  .isClear(),
              ShopCsv.text(shop));
          assertFalse(
              Pairing.solve(
                      shop.settings(),
                      machine.withProvenance(known.withTolerance(most + MonotoneSearch.GRAIN)),
                      vise)
                  .verdict()
                  .isClear(),
              ShopCsv.text(shop));
        }
      }
    }
    assertTrue(checked > 5, "only " + checked);
  }
}
