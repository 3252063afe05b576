package org.jawroom.reference.agree;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.stream.Collectors;
import org.jawroom.advice.blank.BlankGaps;
import org.jawroom.advice.blank.BlankLimit;
import org.jawroom.advice.blank.BlankLimits;
import org.jawroom.advice.blank.Relation;
import org.jawroom.fixture.ShopCsv;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Length;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.pairing.Pairing;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.reference.model.RefLevel;
import org.jawroom.reference.random.RandomRanges;
import org.jawroom.reference.random.RandomRanges.Opened;
import org.jawroom.reference.random.RandomShops;
import org.jawroom.reference.random.RandomShops.Profile;
import org.jawroom.reference.solve.ReferencePairing;
import org.jawroom.shop.OpenReading;
import org.jawroom.shop.Settings;
import org.jawroom.shop.Shop;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.vise.Vise;
import org.jawroom.shop.vise.ViseReadings;
import org.junit.jupiter.api.Test;

/**
 * The limits of open readings in random unknown pairings (section 9 of the model), each put into
 * the reference: with the others at best, and for {@code sure} at worst, the pairing fits at the
 * limit, and 0.01 mm worse it does not.
 */
class LimitAgreementTest {
  private static final int SEEDS = 60;
  private static final long STEP = Length.MM / 100;

  private final Map<Relation, Integer> relations = new EnumMap<>(Relation.class);
  private int sure;
  private int neverSure;

  @Test
  void limits_randomRanges_holdInTheReference() {
    for (Profile profile : Profile.values()) {
      int seeds = AgreementTest.seeds(profile, SEEDS);
      for (long seed = 0; seed < seeds; seed++) {
        check(profile, seed);
      }
    }
    for (Relation relation : Relation.values()) {
      assertTrue(relations.getOrDefault(relation, 0) >= 20, relation + " in " + relations);
    }
    assertTrue(sure >= 20 && neverSure >= 20, sure + " sure, " + neverSure + " never");
  }

  private void check(Profile profile, long seed) {
    Shop shop = RandomShops.shop(profile, seed);
    Settings settings = shop.settings();
    OptionalLong margin =
        Pairing.solve(settings, RandomShops.machine(shop), RandomShops.vise(shop)).bestMargin();
    Opened opened =
        RandomRanges.open(
            RandomShops.machine(shop), RandomShops.vise(shop), seed, margin.orElse(0));
    Outcome outcome = Pairing.solve(settings, opened.machine(), opened.vise());
    if (outcome.verdict() != Verdict.UNKNOWN) {
      return;
    }
    String paste =
        profile
            + " seed "
            + seed
            + "\n"
            + ShopCsv.text(
                shop.withMachines(List.of(opened.machine())).withVises(List.of(opened.vise())));
    List<BlankLimit> limits =
        BlankLimits.of(settings, opened.machine(), opened.vise(), outcome.missing());
    // Section 8: the gaps, and what only helps where it is smaller.
    assertEquals(
        OpenReading.of(opened.machine(), opened.vise(), outcome.missing()).stream()
            .filter(
                reading ->
                    BlankGaps.isGap(reading.column())
                        || ViseReadings.SMALLER_HELPS.contains(reading.column()))
            .collect(Collectors.toSet()),
        limits.stream().map(BlankLimit::reading).collect(Collectors.toSet()),
        paste);
    for (BlankLimit limit : limits) {
      relations.merge(limit.relation(), 1, Integer::sum);
      Filled at = new Filled(settings, opened.machine(), opened.vise(), limit.reading());
      String why = limit + "\n" + paste;
      at.check(RefLevel.BEST, limit.limit(), limit.relation() == Relation.ALWAYS, why);
      at.check(RefLevel.WORST, limit.sure(), false, why);
      if (limit.sure().isPresent()) {
        sure++;
      } else {
        neverSure++;
      }
    }
  }

  /** A pairing with one open reading filled in. */
  private record Filled(Settings settings, Machine machine, Vise vise, OpenReading reading) {

    boolean fits(RefLevel level, long value) {
      return reading.isOfMachine()
          ? ReferencePairing.fits(level, settings, BlankGaps.at(machine, reading, value), vise)
          : ReferencePairing.fits(
              level,
              settings,
              machine,
              ViseReadings.with(vise, reading.column(), Dimension.of(value)));
    }

    /**
     * Checks a limit against the values around it.
     *
     * @param always whether every value serves; the limit is then empty
     */
    void check(RefLevel level, OptionalLong limit, boolean always, String why) {
      boolean grows = reading.isOfMachine();
      Interval values = values();
      long best = grows ? values.hi() : values.lo();
      long worst = grows ? values.lo() : values.hi();
      if (limit.isEmpty()) {
        assertEquals(always, fits(level, always ? worst : best), level + " " + why);
        return;
      }
      long at = limit.getAsLong();
      assertTrue(values.contains(at), level + " outside its range: " + why);
      assertTrue(fits(level, at), level + " does not fit there: " + why);
      long worse = grows ? at - STEP : at + STEP;
      // The largest length of a table is no limit: no longer one is tried.
      if (values.contains(worse) && at != best && Math.abs(worse) < Length.LARGEST) {
        assertTrue(!fits(level, worse), level + " fits 0.01 mm worse: " + why);
      }
    }

    private Interval values() {
      boolean isBlank = reading.value().isBlank();
      boolean gap = reading.isOfMachine();
      Interval all = reading.value().values(isBlank && gap ? -Length.LARGEST : 0);
      return Interval.of(
          Math.max(gap ? -Length.LARGEST : 0, all.lo()), Math.min(Length.LARGEST, all.hi()));
    }
  }
}
