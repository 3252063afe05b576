package org.jawroom.reference.agree;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Random;
import org.jawroom.fixture.ShopCsv;
import org.jawroom.geometry.Length;
import org.jawroom.geometry.Orientation;
import org.jawroom.placement.pairing.Pairing;
import org.jawroom.placement.space.Place;
import org.jawroom.placement.standing.StandingOutcome;
import org.jawroom.placement.standing.StandingOutcome.Says;
import org.jawroom.placement.standing.StandingPairing;
import org.jawroom.reference.model.RefLevel;
import org.jawroom.reference.model.RefMargin;
import org.jawroom.reference.model.RefModel;
import org.jawroom.reference.model.RefPair;
import org.jawroom.reference.model.RefRegion;
import org.jawroom.reference.random.RandomShops;
import org.jawroom.reference.random.RandomShops.Profile;
import org.jawroom.reference.solve.RefReach;
import org.jawroom.reference.solve.ReferencePairing;
import org.jawroom.reference.space.Span;
import org.jawroom.shop.Settings;
import org.jawroom.shop.Shop;
import org.jawroom.shop.Standing;
import org.jawroom.shop.TapedPlace;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.value.Provenance;
import org.jawroom.shop.vise.Vise;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Vises standing at random places of random shops, against the second solver's parts, guards and
 * bolts: every margin on a comb of places within the tolerance of the measures, and every opening
 * on a comb.
 */
class StandingAgreementTest {
  private static final int SEEDS = 60;
  private static final int COMB = 24;

  private final Map<Says, Integer> counts = new EnumMap<>(Says.class);
  private int exact;

  @ParameterizedTest
  @EnumSource(
      value = Profile.class,
      names = {
        "SQUEEZED",
        "COARSE",
        "KEYED",
        "SLOTS_ALONG_Y",
        "BOTH_JAWS",
        "SHAPE_PARTS",
        "TOLERANCES",
        "SHORTEST_TOOL",
        "HANDLED",
        "STRAPPED",
        "TOUCHING",
        "MAX_OVERHANG"
      })
  void solve_randomPlaces_asTryingACombOfPlacesDoes(Profile profile) {
    for (long seed = 0; seed < SEEDS; seed++) {
      Shop shop = RandomShops.shop(profile, seed);
      Machine machine = RandomShops.machine(shop);
      Vise vise = RandomShops.vise(shop);
      Settings settings = ReferencePairing.withoutHandRoom(shop.settings());
      RefModel model = RefModel.at(RefLevel.WORST, settings, machine, vise, false);
      Random random = new Random(seed);
      for (RefRegion region : model.regions) {
        Standing standing = standing(random, model, region);
        StandingOutcome found = StandingPairing.solve(shop.settings(), standing);
        String paste =
            profile + " seed " + seed + " " + standing.place() + " ± " + standing.tolerance();
        compare(model, region, standing, found, paste + "\n" + ShopCsv.text(shop));
        counts.merge(found.says(), 1, Integer::sum);
      }
    }
    assertTrue(
        counts.getOrDefault(Says.OFF_SLOTS, 0) > 5
            && counts.getOrDefault(Says.FITS, 0) + counts.getOrDefault(Says.LIMITED, 0) > 5
            && exact > 5,
        counts + ", " + exact);
  }

  private void compare(
      RefModel model, RefRegion region, Standing standing, StandingOutcome found, String paste) {
    long t = standing.tolerance();
    Span x = new Span(standing.x() - t, standing.x() + t);
    Span y = new Span(standing.y() - t, standing.y() + t);
    assertEquals(region.within(x, y).isEmpty(), found.says() == Says.OFF_SLOTS, paste);
    if (found.says() == Says.OFF_SLOTS) {
      return;
    }
    Span whole = model.wholeOpening();
    long tried = least(model.fields(region, whole), standing, 4);
    long margin = found.limit().isEmpty() ? RefMargin.NO_LIMIT : found.limit().get().margin();
    assertTrue(margin <= tried, margin + " although " + tried + " was found; " + paste);
    // What is narrower than the tolerance may be met between the places of the comb.
    boolean wide =
        model.fields(region, whole).stream()
            .allMatch(
                field -> field.bX() - field.aX() >= 2 * t && field.bY() - field.aY() >= 2 * t);
    if (t == 0 || wide && margin >= 0) {
      assertEquals(tried, margin, paste);
      exact++;
    }
    assertEquals(margin >= 0, found.says() == Says.FITS, paste);
    long worst = 0;
    for (long atX : List.of(x.lo(), x.hi())) {
      for (long atY : List.of(y.lo(), y.hi())) {
        worst = Math.max(worst, new RefReach(model).shortfall(region.turn(), atX, atY));
      }
    }
    assertEquals(OptionalLong.of(worst), found.reachShortfall(), paste);
    if (found.says() != Says.FITS && wide) {
      openings(model, region, standing, found, paste);
    }
  }

  /** No range on the comb is wider than the one reported, by more than what printing takes. */
  private static void openings(
      RefModel model, RefRegion region, Standing standing, StandingOutcome found, String paste) {
    Span whole = model.wholeOpening();
    long least = model.settings.leastOpening();
    long reported =
        found.usable().map(range -> range.length() + 2 * Settings.OPENING_GRAIN).orElse(least);
    found
        .usable()
        .ifPresent(
            range -> {
              Span openings = new Span(range.lo(), range.hi());
              assertTrue(least(model.fields(region, openings), standing, 1) >= 0, paste);
            });
    for (int i = 0; i < COMB; i++) {
      for (int j = COMB; j > i; j--) {
        long from = whole.lo() + (whole.hi() - whole.lo()) * i / COMB;
        long to = whole.lo() + (whole.hi() - whole.lo()) * j / COMB;
        if (to - from <= reported || to - from < least) {
          break;
        }
        long there = least(model.fields(region, new Span(from, to)), standing, 1);
        assertTrue(there < 0, from + " to " + to + " is free; " + paste);
      }
    }
  }

  /** The least margin over a comb of places within the tolerance, its corners included. */
  private static long least(List<RefPair.Field> fields, Standing standing, int steps) {
    long least = RefMargin.NO_LIMIT;
    long t = standing.tolerance();
    for (int i = 0; i <= steps; i++) {
      for (int j = 0; j <= steps; j++) {
        long x = standing.x() - t + 2 * t * i / steps;
        long y = standing.y() - t + 2 * t * j / steps;
        for (RefPair.Field field : fields) {
          least = Math.min(least, field.margin(x, y));
        }
      }
    }
    return least;
  }

  /** Often at the best place of its turn, and in one of four cases beside what holds it. */
  private static Standing standing(Random random, RefModel model, RefRegion region) {
    Span xs = region.xs().get(random.nextInt(region.xs().size()));
    Span ys = region.ys().get(random.nextInt(region.ys().size()));
    long off = random.nextInt(4) == 0 ? 3 * Length.MM : 0;
    Place best =
        Pairing.solve(model.settings, model.machine, model.vise)
            .recommended()
            .filter(place -> place.handleTo() == region.turn())
            .map(place -> new Place(place.x(), place.y()))
            .orElseGet(() -> new Place(point(random, xs), point(random, ys)));
    boolean aside = random.nextInt(3) == 0;
    long x = (aside ? point(random, xs) : best.x()) + off;
    long y = (aside ? point(random, ys) : best.y()) + off;
    long tolerance = random.nextInt(3) == 0 ? 0 : random.nextInt(3) * Length.MM / 2;
    Orientation turn = region.turn();
    Standing standing =
        new Standing(
            model.machine,
            model.vise,
            TapedPlace.of(model.machine, model.vise, turn, x, y),
            region.mount().name(),
            new Provenance(tolerance, false, "", ""));
    assertEquals(Optional.of(x), Optional.of(standing.x()));
    assertEquals(y, standing.y());
    return standing;
  }

  /** An end, or some place not far from the middle. */
  private static long point(Random random, Span span) {
    long length = span.hi() - span.lo();
    return switch (random.nextInt(4)) {
      case 0 -> span.lo();
      case 1 -> span.hi();
      default -> span.lo() + length * (1 + random.nextInt(15)) / 16;
    };
  }
}
