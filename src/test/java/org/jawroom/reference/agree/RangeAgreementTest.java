package org.jawroom.reference.agree;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.LongStream;
import org.jawroom.fixture.ShopCsv;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.pairing.Pairing;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.reference.model.RefLevel;
import org.jawroom.reference.model.RefModel;
import org.jawroom.reference.random.RandomRanges;
import org.jawroom.reference.random.RandomRanges.Form;
import org.jawroom.reference.random.RandomRanges.Opened;
import org.jawroom.reference.random.RandomShops;
import org.jawroom.reference.random.RandomShops.Profile;
import org.jawroom.reference.solve.ReferenceOutcome;
import org.jawroom.reference.solve.ReferencePairing;
import org.jawroom.shop.Settings;
import org.jawroom.shop.Shop;
import org.jawroom.shop.value.Column;
import org.junit.jupiter.api.Test;

/**
 * The solver and the reference solve the same random pairings whose readings are known within
 * bounds, more than 20 000 per run of the gate. Every reported value must agree to the
 * half-nanometre. {@code -Dranges.seeds=5000} tries more seeds, {@code -Dranges.first=5000} others.
 */
class RangeAgreementTest {
  private static final int SEEDS = Integer.getInteger("ranges.seeds", 450);
  private static final long FIRST = Long.getLong("ranges.first", 0);
  private static final int PAIRINGS_IN_THE_GATE = 20_000;

  /** The columns that may hold a range or be blank, and of which the random shops have each. */
  private static final Set<Column> OPENED =
      EnumSet.of(
          Column.SLOT_WIDTH,
          Column.SLOT_PITCH,
          Column.FRONT_GAP,
          Column.REAR_GAP,
          Column.LEFT_GAP,
          Column.RIGHT_GAP,
          Column.GUARD_GAP,
          Column.NOSE_MIN,
          Column.NOSE_MAX,
          Column.BASE_WIDTH,
          Column.REAR_REACH,
          Column.FRONT_REACH,
          Column.FIXED_JAW_THICKNESS,
          Column.MOVING_JAW_THICKNESS,
          Column.REAR_PROJECTION_CLOSED,
          Column.REAR_PROJECTION_OPEN,
          Column.FRONT_PROJECTION_CLOSED,
          Column.FRONT_PROJECTION_OPEN,
          Column.SCREW_HEIGHT,
          Column.SCREW_DIAMETER,
          Column.HANDLE_RADIUS,
          Column.HANDLE_DEPTH,
          Column.BOLT_SPACING,
          Column.BOLT_U,
          Column.BOLT_HOLE_U,
          Column.BOLT_HOLE_V,
          Column.HOLE_U,
          Column.HOLE_V);

  /** Two outcomes that differ; unsafe if the solver's verdict is the better one. */
  private record Disagreement(String input, boolean unsafe, String expected, String actual) {}

  private final Map<Verdict, Integer> verdicts = new ConcurrentHashMap<>();
  private final Map<Form, Integer> forms = new ConcurrentHashMap<>();
  private final Map<Column, Integer> columns = new ConcurrentHashMap<>();
  private final Map<Verdict, Integer> bounded = new ConcurrentHashMap<>();
  private final AtomicInteger moreCareful = new AtomicInteger();

  @Test
  void solve_randomRanges_asTheReferenceHasIt() {
    int pairings = 0;
    for (Profile profile : Profile.values()) {
      int seeds = AgreementTest.seeds(profile, SEEDS);
      pairings += seeds;
      List<Disagreement> all = disagreements(profile, seeds);
      if (!all.isEmpty()) {
        Disagreement first = all.get(0);
        long unsafe = all.stream().filter(Disagreement::unsafe).count();
        assertEquals(
            first.expected(),
            first.actual(),
            () -> all.size() + " disagreements, UNSAFE among them: " + unsafe + first.input());
      }
    }
    assertTrue(pairings >= PAIRINGS_IN_THE_GATE, "only " + pairings);
    assertTrue(moreCareful.get() <= pairings / 1000, moreCareful + " in " + pairings);
    for (Verdict verdict : Verdict.values()) {
      assertTrue(verdicts.getOrDefault(verdict, 0) >= 20, verdict + " in " + verdicts);
    }
    for (Form form : Form.values()) {
      assertTrue(forms.getOrDefault(form, 0) >= 500, form + " in " + forms);
    }
    for (Column column : OPENED) {
      assertTrue(columns.getOrDefault(column, 0) >= 20, column + " in " + columns);
    }
    for (Verdict verdict : List.of(Verdict.FITS, Verdict.NO_PLACE, Verdict.UNKNOWN)) {
      assertTrue(bounded.getOrDefault(verdict, 0) >= 20, verdict + " in " + bounded);
    }
  }

  private List<Disagreement> disagreements(Profile profile, int seeds) {
    return LongStream.range(FIRST, FIRST + seeds)
        .parallel()
        .mapToObj(seed -> disagreement(profile, seed))
        .flatMap(Optional::stream)
        .sorted(
            Comparator.comparing((Disagreement found) -> !found.unsafe())
                .thenComparing(found -> found.input().length()))
        .toList();
  }

  private Optional<Disagreement> disagreement(Profile profile, long seed) {
    Shop shop = RandomShops.shop(profile, seed);
    Settings settings = shop.settings();
    OptionalLong margin =
        Pairing.solve(settings, RandomShops.machine(shop), RandomShops.vise(shop)).bestMargin();
    Opened opened =
        RandomRanges.open(
            RandomShops.machine(shop), RandomShops.vise(shop), seed, margin.orElse(0));
    try {
      ReferenceOutcome expected = ReferencePairing.solve(settings, opened.machine(), opened.vise());
      Outcome actual = Pairing.solve(settings, opened.machine(), opened.vise());
      count(settings, opened, expected);
      String one = AgreementTest.describe(expected);
      String other = AgreementTest.describe(actual, expected);
      boolean unsafe = actual.verdict().compareTo(expected.verdict()) < 0;
      if (one.equals(other)) {
        return Optional.empty();
      }
      if (isMoreCareful(settings, opened, expected, actual)) {
        moreCareful.incrementAndGet();
        return Optional.empty();
      }
      return Optional.of(
          new Disagreement(input(profile, seed, settings, opened), unsafe, one, other));
    } catch (RuntimeException e) {
      throw new AssertionError(input(profile, seed, settings, opened), e);
    }
  }

  private void count(Settings settings, Opened opened, ReferenceOutcome expected) {
    opened.forms().forEach(form -> forms.merge(form, 1, Integer::sum));
    RefModel.at(RefLevel.WORST, settings, opened.machine(), opened.vise(), false)
        .missing
        .forEach(column -> columns.merge(column, 1, Integer::sum));
    verdicts.merge(expected.verdict(), 1, Integer::sum);
    if (expected.bounds().atWorst().isPresent() && expected.bounds().atBest().isPresent()) {
      bounded.merge(expected.verdict(), 1, Integer::sum);
    }
  }

  /**
   * Where the values of a part's readings share nothing over some openings only, the solver leaves
   * that part out over every part of the opening range: it may leave unknown what is hopeless.
   */
  private static boolean isMoreCareful(
      Settings settings, Opened opened, ReferenceOutcome expected, Outcome actual) {
    return expected.verdict() == Verdict.NO_PLACE
        && actual.verdict() == Verdict.UNKNOWN
        && expected.bounds().atWorst().equals(actual.bounds().atWorst())
        && expected.bounds().atBest().equals(actual.bounds().atBest())
        && RefModel.at(RefLevel.BEST, settings, opened.machine(), opened.vise(), false)
            .hasPartlyEmptyPart();
  }

  private static String input(Profile profile, long seed, Settings settings, Opened opened) {
    Shop shop = new Shop(settings, List.of(opened.machine()), List.of(opened.vise()), List.of());
    return "\n" + profile + " seed " + seed + " " + opened.forms() + "\n" + ShopCsv.text(shop);
  }
}
