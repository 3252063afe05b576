package org.jawroom.placement.pairing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Random;
import java.util.Set;
import org.jawroom.fixture.ShopCsv;
import org.jawroom.geometry.Length;
import org.jawroom.placement.bolting.Region;
import org.jawroom.placement.pairing.ReadingOpener.Standing;
import org.jawroom.placement.search.Recommendation;
import org.jawroom.reference.random.RandomShops;
import org.jawroom.reference.random.RandomShops.Profile;
import org.jawroom.shop.Settings;
import org.jawroom.shop.Shop;
import org.jawroom.shop.value.Dimension;
import org.junit.jupiter.api.Test;

/**
 * Pairings with readings known within bounds against the closed solver at the corners of these
 * bounds and at values between: what is reported holds for each (Moore, Kearfott and Cloud,
 * Introduction to Interval Analysis, SIAM 2009, chapter 5, from memory: an interval extension
 * encloses the range of the function).
 */
class OpenReadingsTest {
  private static final List<Profile> PROFILES =
      List.of(
          Profile.PLAIN,
          Profile.SQUEEZED,
          Profile.CLUTTERED,
          Profile.BOTH_JAWS,
          Profile.EXTRA_MOUNTS,
          Profile.SHORTEST_TOOL,
          Profile.MAX_OVERHANG,
          Profile.TOLERANCES,
          Profile.HANDLED,
          Profile.TINY);

  private final Map<Verdict, Integer> certain = new EnumMap<>(Verdict.class);
  private final Set<String> opened = new HashSet<>();
  private int places;
  private int worstIsACorner;
  private int narrowed;

  @Test
  void verdict_randomRanges_holdsForEveryValue() {
    for (Profile profile : PROFILES) {
      for (long seed = 0; seed < 150; seed++) {
        check(profile, seed);
      }
    }
    for (Verdict verdict : Verdict.values()) {
      assertTrue(certain.getOrDefault(verdict, 0) > 5, verdict + " " + certain);
    }
    assertTrue(opened.size() >= ReadingOpener.all().size() - 1, "opened " + opened);
    assertTrue(places > 500, "places " + places);
    assertTrue(worstIsACorner > 200, "worst is a corner " + worstIsACorner);
    assertTrue(narrowed > 500, "narrowed " + narrowed);
  }

  private record Opened(ReadingOpener reading, long lo, long hi) {}

  private void check(Profile profile, long seed) {
    Shop shop = RandomShops.shop(profile, seed);
    Random random = new Random(seed);
    // A larger hole takes a larger bolt, if it may; what is reported is for the smaller one.
    Settings settings = shop.settings().toBuilder().smallerThreads(false).build();
    Standing known = new Standing(RandomShops.machine(shop), RandomShops.vise(shop));
    List<Opened> ranges = ranges(known, random);
    Standing open = known;
    for (Opened one : ranges) {
      open = one.reading.with().apply(open, Dimension.within(one.lo, one.hi));
    }
    String input =
        profile
            + " seed "
            + seed
            + " opened "
            + ranges.stream().map(one -> one.reading.name()).toList()
            + "\n"
            + ShopCsv.text(
                new Shop(settings, List.of(open.machine()), List.of(open.vise()), List.of()));
    SolvedPairing solved = Pairing.solved(settings, open.machine(), open.vise());
    Outcome outcome = solved.outcome();
    if (!solved.model().isOpen()) {
      return;
    }
    ranges.forEach(one -> opened.add(one.reading.name()));
    certain.merge(outcome.verdict(), 1, Integer::sum);
    long least = Long.MAX_VALUE;
    for (Standing at : values(known, ranges, random)) {
      SolvedPairing closed = Pairing.solved(settings, at.machine(), at.vise());
      compare(outcome, closed, input);
      OptionalLong margin = closed.model().bestMargin();
      OptionalLong worst = solved.model().bestMargin();
      OptionalLong best = solved.model().atBest().bestMargin();
      if (worst.isPresent()) {
        assertTrue(margin.isPresent() && worst.getAsLong() <= margin.getAsLong(), input);
      }
      if (margin.isPresent()) {
        assertTrue(best.isPresent() && margin.getAsLong() <= best.getAsLong(), input);
        least = Math.min(least, margin.getAsLong());
      }
    }
    OptionalLong worst = solved.model().bestMargin();
    worstIsACorner += worst.isPresent() && worst.getAsLong() == least ? 1 : 0;
    narrowing(settings, open, ranges, outcome, random, input);
  }

  /** Narrowing a range changes nothing that was certain but for the better. */
  private void narrowing(
      Settings settings,
      Standing open,
      List<Opened> ranges,
      Outcome outcome,
      Random random,
      String input) {
    Opened one = ranges.get(random.nextInt(ranges.size()));
    long middle = one.lo + (one.hi - one.lo) / 2;
    Standing half = one.reading.with().apply(open, Dimension.within(one.lo, middle));
    Verdict then = Pairing.solve(settings, half.machine(), half.vise()).verdict();
    narrowed++;
    switch (outcome.verdict()) {
      case FITS, NO_MOUNT -> assertEquals(outcome.verdict(), then, input);
      case AWKWARD -> assertTrue(then.isClear(), input);
      case NO_PLACE ->
          assertTrue(then == Verdict.NO_PLACE || then == Verdict.NO_MOUNT, input + then);
      case MEASURE, LIMITED ->
          assertTrue(
              then != Verdict.NO_PLACE && then != Verdict.NO_MOUNT && then != Verdict.UNKNOWN,
              input + then);
      case UNKNOWN -> {
        // Anything may come of it.
      }
    }
  }

  private void compare(Outcome open, SolvedPairing closed, String input) {
    Verdict at = closed.outcome().verdict();
    String both = open.verdict() + ", but " + at + " " + input;
    switch (open.verdict()) {
      case FITS -> assertEquals(Verdict.FITS, at, both);
      case AWKWARD -> assertTrue(at.isClear(), both);
      case MEASURE, LIMITED -> assertTrue(at != Verdict.NO_PLACE && at != Verdict.NO_MOUNT, both);
      case NO_PLACE -> assertTrue(at == Verdict.NO_PLACE || at == Verdict.NO_MOUNT, both);
      case NO_MOUNT -> assertEquals(Verdict.NO_MOUNT, at, both);
      case UNKNOWN -> {
        // Nothing is claimed.
      }
    }
    open.recommended().ifPresent(place -> stands(open, place, closed, input));
  }

  /** The place reported holds for these values, with at least the margin reported. */
  private void stands(Outcome open, Recommendation place, SolvedPairing closed, String input) {
    Optional<Region> region =
        closed.model().regions().stream()
            .filter(one -> one.turn() == place.handleTo())
            .filter(one -> one.fastening().index() == place.fastening().index())
            .findFirst();
    assertTrue(region.isPresent(), input);
    assertTrue(
        region.get().places().rectangles().stream()
            .anyMatch(held -> held.contains(place.x(), place.y())),
        input + " at " + place);
    if (region.get().fastening().thread().equals(place.thread())) {
      long margin = region.get().field(place.openings()).margin(place.x(), place.y());
      assertTrue(margin >= open.margin().orElse(Long.MIN_VALUE), input + " at " + place);
      places++;
    }
  }

  /** One or two known readings with random bounds about them. */
  private static List<Opened> ranges(Standing known, Random random) {
    List<ReadingOpener> all = ReadingOpener.all();
    List<Opened> ranges = new ArrayList<>();
    Set<String> names = new HashSet<>();
    for (int tries = 0; ranges.size() < 1 + random.nextInt(2); tries++) {
      assertTrue(tries < 1_000, "no reading to open");
      ReadingOpener reading = all.get(random.nextInt(all.size()));
      Optional<Dimension> now = reading.get().apply(known).filter(Dimension::isKnown);
      if (now.isPresent() && names.add(reading.name())) {
        long value = now.get().length();
        long unit = random.nextBoolean() ? Length.MM : 2;
        long lo = value - unit * random.nextInt(12);
        long hi = value + unit * (1 + random.nextInt(12));
        ranges.add(new Opened(reading, value >= 0 ? Math.max(0, lo) : lo, hi));
      }
    }
    return ranges;
  }

  /** Every corner of the bounds, and two points within. */
  private static List<Standing> values(Standing known, List<Opened> ranges, Random random) {
    List<Standing> all = List.of(known);
    for (Opened one : ranges) {
      List<Standing> more = new ArrayList<>();
      for (Standing standing : all) {
        for (long value :
            List.of(
                one.lo, one.hi, one.lo + 2 * (random.nextLong() >>> 1) % (one.hi - one.lo + 1))) {
          long even = value / 2 * 2;
          long held = Math.max(one.lo, Math.min(one.hi, even));
          if (one.reading.isPossible(standing, held)) {
            more.add(one.reading.with().apply(standing, Dimension.of(held)));
          }
        }
      }
      all = more;
    }
    return all;
  }
}
