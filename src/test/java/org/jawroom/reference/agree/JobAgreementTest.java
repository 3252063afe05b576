package org.jawroom.reference.agree;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.jawroom.clearance.gap.Limit;
import org.jawroom.fixture.ShopCsv;
import org.jawroom.placement.job.JobExplanation;
import org.jawroom.placement.job.JobOutcome;
import org.jawroom.placement.job.JobPairing;
import org.jawroom.placement.job.JobReason;
import org.jawroom.placement.job.Shortfall;
import org.jawroom.placement.job.Unchecked;
import org.jawroom.placement.search.Recommendation;
import org.jawroom.reference.random.RandomJobs;
import org.jawroom.reference.random.RandomRanges;
import org.jawroom.reference.random.RandomShops;
import org.jawroom.reference.random.RandomShops.Profile;
import org.jawroom.reference.solve.ReferenceJob;
import org.jawroom.reference.solve.ReferenceOutcome.Limiting;
import org.jawroom.reference.solve.ReferenceOutcome.Place;
import org.jawroom.shop.Job;
import org.jawroom.shop.Shop;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.vise.Vise;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * The solver and the reference solve the same jobs on random shops. Every reported value must agree
 * to the half-nanometre. {@code -Dagreement.seeds=1000} tries more seeds, {@code
 * -Dagreement.first=5000} others.
 */
class JobAgreementTest {
  private static final int SEEDS = Integer.getInteger("agreement.seeds", 25);
  private static final long FIRST = Long.getLong("agreement.first", 0);

  /** The first jaw of a simple vise. */
  private static final Set<String> JAWS = Set.of("fixed jaw", "rear jaw");

  @ParameterizedTest
  @EnumSource(Profile.class)
  void solve_randomJobs_asTheReferenceHasIt(Profile profile) {
    for (long seed = FIRST; seed < FIRST + SEEDS; seed++) {
      Shop shop = RandomJobs.shop(profile, seed);
      String text = profile + " seed " + seed + "\n" + ShopCsv.text(shop);
      List<JobOutcome> outcomes = solve(shop, text);
      for (int index = 0; index < shop.jobs().size(); index++) {
        Job job = shop.jobs().get(index);
        ReferenceJob.Answer expected =
            ReferenceJob.solve(
                shop.settings(), RandomShops.machine(shop), RandomShops.vise(shop), job);

        assertEquals(
            describe(expected),
            describe(outcomes.get(index), expected),
            () -> job.name() + " of " + text);
      }
    }
  }

  /**
   * With readings known within bounds, too: the verdicts alone, since of a job that is not held
   * even at best no amount is defined.
   */
  @ParameterizedTest
  @EnumSource(Profile.class)
  void solve_randomRanges_theVerdictIsThatOfTheReference(Profile profile) {
    for (long seed = FIRST; seed < FIRST + SEEDS; seed++) {
      Shop shop = RandomJobs.shop(profile, seed);
      RandomRanges.Opened opened =
          RandomRanges.open(RandomShops.machine(shop), RandomShops.vise(shop), seed, 0);
      String text = profile + " seed " + seed + "\n";
      for (Job job : shop.jobs()) {
        String expected =
            ReferenceJob.solve(shop.settings(), opened.machine(), opened.vise(), job).verdict();
        JobOutcome actual = JobPairing.solve(shop.settings(), opened.machine(), opened.vise(), job);
        Shop with =
            new Shop(
                shop.settings(), List.of(opened.machine()), List.of(opened.vise()), List.of(job));
        assertEquals(
            expected,
            actual.verdict().code(),
            () -> job.name() + " of " + text + ShopCsv.text(with));
      }
    }
  }

  /** The tightest of all pairs at the placement is the reported limit. */
  @Test
  void explain_randomJobs_beginsWithWhatLimitsThePlace() {
    int limited = 0;
    for (Profile profile : Profile.values()) {
      for (long seed = FIRST; seed < FIRST + SEEDS; seed++) {
        Shop shop = RandomJobs.shop(profile, seed);
        String text = profile + " seed " + seed + "\n" + ShopCsv.text(shop);
        Machine machine = RandomShops.machine(shop);
        Vise vise = RandomShops.vise(shop);
        for (Job job : shop.jobs()) {
          JobExplanation explanation = JobPairing.explain(shop.settings(), machine, vise, job);
          assertEquals(
              JobPairing.solve(shop.settings(), machine, vise, job), explanation.outcome(), text);
          assertEquals(
              explanation.outcome().limit(),
              explanation.pairs().stream().findFirst(),
              () -> job.name() + " of " + text);
          limited += explanation.outcome().limit().isPresent() ? 1 : 0;
          explanation
              .outcome()
              .place()
              .ifPresent(place -> assertBolts(vise, place.mount(), explanation.pairs(), text));
        }
      }
    }
    assertTrue(limited > 0, "none is limited by anything");
  }

  /**
   * Every bolt of the reported mount, and no other, is paired with whatever the jaw is paired with.
   */
  private static void assertBolts(Vise vise, String mount, List<Limit> pairs, String text) {
    long ofJaw = pairs.stream().filter(pair -> JAWS.contains(pair.part())).count();
    long ofBolts = pairs.stream().filter(pair -> pair.part().equals("bolts")).count();
    int bolts =
        vise.mounts().stream()
            .filter(one -> one.name().equals(mount))
            .mapToInt(one -> one.bolts().size())
            .sum();
    if (vise.simple()) {
      assertEquals(bolts * ofJaw, ofBolts, text);
    }
  }

  /** Agreement is meaningful only if every case occurs. */
  @Test
  void jobs_ofAllProfiles_bringEveryVerdictAndReason() {
    Map<String, Integer> counts = new TreeMap<>();
    for (Profile profile : Profile.values()) {
      for (long seed = 0; seed < 20; seed++) {
        for (JobOutcome outcome : JobPairing.all(RandomJobs.shop(profile, seed))) {
          counts.merge(outcome.verdict().code(), 1, Integer::sum);
          outcome.shortfalls().forEach(fall -> counts.merge(fall.reason().code(), 1, Integer::sum));
        }
      }
    }
    // Only one machine is present, so a job cannot exclude it; see JobPairingTest.
    Set<JobReason> reasons = EnumSet.complementOf(EnumSet.of(JobReason.MACHINE));
    for (JobReason reason : reasons) {
      assertTrue(counts.getOrDefault(reason.code(), 0) >= 5, () -> reason + " is rare: " + counts);
    }
    for (String verdict : List.of("held", "not held", "unknown")) {
      assertTrue(counts.getOrDefault(verdict, 0) >= 50, () -> verdict + " is rare: " + counts);
    }
  }

  private static List<JobOutcome> solve(Shop shop, String text) {
    try {
      return JobPairing.all(shop);
    } catch (RuntimeException e) {
      throw new AssertionError(text, e);
    }
  }

  private static String describe(ReferenceJob.Answer answer) {
    Map<String, Object> values = new LinkedHashMap<>();
    values.put("verdict", answer.verdict());
    values.put("fails", answer.fails());
    values.put("tool room", answer.toolRoom());
    values.put("load room", answer.loadRoom().map(BigDecimal::stripTrailingZeros));
    values.put("stick-out", answer.stickOut());
    values.put("missing", answer.missing());
    values.put("unchecked", answer.unchecked());
    if (answer.place().isPresent()) {
      Place place = answer.place().get();
      PlaceValues.put(values, place);
    }
    return values.toString();
  }

  private static String describe(JobOutcome outcome, ReferenceJob.Answer expected) {
    Map<String, Object> values = new LinkedHashMap<>();
    values.put("verdict", outcome.verdict().code());
    values.put("fails", outcome.shortfalls().stream().map(JobAgreementTest::words).toList());
    values.put("tool room", outcome.toolRoom());
    values.put("load room", outcome.loadRoom().map(BigDecimal::stripTrailingZeros));
    values.put("stick-out", outcome.shortestStickOut());
    values.put("missing", outcome.missing());
    values.put("unchecked", outcome.unchecked().stream().map(Unchecked::code).toList());
    if (outcome.place().isPresent()) {
      Recommendation place = outcome.place().get();
      PlaceValues.put(values, place, namesAnEdge(expected));
    }
    return values.toString();
  }

  /** Whether the model determines the edge that faces the guard; on a tie it does not. */
  private static boolean namesAnEdge(ReferenceJob.Answer expected) {
    return expected.place().flatMap(Place::limiting).flatMap(Limiting::opening).isPresent();
  }

  private static String words(Shortfall shortfall) {
    String by = shortfall.by().isPresent() ? " " + shortfall.by().getAsLong() : "";
    return shortfall.reason().code()
        + by
        + shortfall.kilograms().map(kg -> " " + kg.toPlainString()).orElse("");
  }
}
