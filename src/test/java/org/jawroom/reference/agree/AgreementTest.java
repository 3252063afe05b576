package org.jawroom.reference.agree;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.LongStream;
import org.jawroom.fixture.ShopCsv;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.pairing.Pairing;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.placement.search.Recommendation;
import org.jawroom.reference.random.RandomShops;
import org.jawroom.reference.random.RandomShops.Profile;
import org.jawroom.reference.solve.ReferenceOutcome;
import org.jawroom.reference.solve.ReferenceOutcome.Limiting;
import org.jawroom.reference.solve.ReferenceOutcome.Place;
import org.jawroom.reference.solve.ReferencePairing;
import org.jawroom.shop.Settings;
import org.jawroom.shop.Shop;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.vise.Vise;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * The solver and the reference solve the same random shops, more than 100 000 pairings per run of
 * the gate. Every reported value must agree to the half-nanometre. {@code -Dagreement.seeds=50000}
 * tries more seeds, {@code -Dagreement.first=5000} others, {@code mvn -Ptwins test} millions.
 */
class AgreementTest {
  private static final int PAIRINGS_IN_THE_GATE = 100_000;
  private static final int SEEDS_IN_THE_GATE = 2_010;
  private static final int SEEDS = Integer.getInteger("agreement.seeds", SEEDS_IN_THE_GATE);
  private static final long FIRST = Long.getLong("agreement.first", 0);

  /** The two outcomes of a seed where they differ. */
  private record Disagreement(long seed, boolean falseFits, String expected, String actual) {}

  @ParameterizedTest
  @EnumSource(Profile.class)
  void solve_randomShops_asTheReferenceHasIt(Profile profile) {
    List<Disagreement> all =
        LongStream.range(FIRST, FIRST + seeds(profile, SEEDS))
            .parallel()
            .mapToObj(seed -> disagreement(profile, seed))
            .flatMap(Optional::stream)
            .sorted(Comparator.comparing((Disagreement found) -> !found.falseFits()))
            .toList();

    if (!all.isEmpty()) {
      Disagreement first = all.get(0);
      long falseFits = all.stream().filter(Disagreement::falseFits).count();
      assertEquals(
          first.expected(),
          first.actual(),
          () ->
              all.size()
                  + " disagreements, FALSE FITS among them: "
                  + falseFits
                  + "; "
                  + text(profile, first.seed()));
    }
  }

  @Test
  void seeds_inTheGate_areAHundredThousandPairings() {
    int pairings = 0;
    for (Profile profile : Profile.values()) {
      pairings += seeds(profile, SEEDS_IN_THE_GATE);
    }
    assertTrue(pairings >= PAIRINGS_IN_THE_GATE, "only " + pairings);
  }

  /** For a crowded shop the reference takes many times as long. */
  static int seeds(Profile profile, int seeds) {
    return profile.isCrowded() ? Math.max(1, seeds / 8) : seeds;
  }

  private static Optional<Disagreement> disagreement(Profile profile, long seed) {
    Shop shop = RandomShops.shop(profile, seed);
    Settings settings = shop.settings();
    Machine machine = RandomShops.machine(shop);
    Vise vise = RandomShops.vise(shop);
    try {
      ReferenceOutcome expected = ReferencePairing.solve(settings, machine, vise);
      Outcome actual = Pairing.solve(settings, machine, vise);
      String one = describe(expected);
      String other = describe(actual, expected);
      boolean falseFits = actual.verdict() == Verdict.FITS && expected.verdict() != Verdict.FITS;
      return one.equals(other)
          ? Optional.empty()
          : Optional.of(new Disagreement(seed, falseFits, one, other));
    } catch (RuntimeException e) {
      throw new AssertionError(text(profile, seed), e);
    }
  }

  private static String text(Profile profile, long seed) {
    return profile + " seed " + seed + "\n" + ShopCsv.text(RandomShops.shop(profile, seed));
  }

  static String describe(ReferenceOutcome outcome) {
    Map<String, Object> values = new LinkedHashMap<>();
    values.put("verdict", outcome.verdict());
    values.put("best", outcome.bestMargin());
    values.put("usable", outcome.usable().map(u -> List.of(u.printed().lo(), u.printed().hi())));
    values.put("caveats", outcome.caveats());
    values.put("room", outcome.roomOverJaws());
    values.put("load", outcome.loadLeft());
    values.put("tool too short", outcome.toolTooShort());
    values.put("bounds", List.of(outcome.bounds().atWorst(), outcome.bounds().atBest()));
    values.put("missing", outcome.missing());
    if (outcome.recommended().isPresent()) {
      Place place = outcome.recommended().get();
      PlaceValues.put(values, place);
      values.put("overhang", place.overhang());
    }
    return values.toString();
  }

  static String describe(Outcome outcome, ReferenceOutcome expected) {
    Map<String, Object> values = new LinkedHashMap<>();
    values.put("verdict", outcome.verdict());
    values.put("best", outcome.bestMargin());
    values.put("usable", outcome.usableOpening().map(u -> List.of(u.lo(), u.hi())));
    values.put("caveats", outcome.caveats().stream().sorted().toList());
    values.put("room", outcome.roomOverJaws());
    values.put("load", outcome.loadLeft());
    values.put("tool too short", outcome.shortestToolTooShort());
    values.put("bounds", List.of(outcome.bounds().atWorst(), outcome.bounds().atBest()));
    values.put("missing", outcome.missing());
    if (outcome.recommended().isPresent()) {
      Recommendation place = outcome.recommended().get();
      PlaceValues.put(values, place, namesAnEdge(expected));
      values.put("overhang", place.overhang());
    }
    return values.toString();
  }

  /** Whether the model determines the edge that faces the guard; on a tie it does not. */
  private static boolean namesAnEdge(ReferenceOutcome expected) {
    return expected.recommended().flatMap(Place::limiting).flatMap(Limiting::opening).isPresent();
  }
}
