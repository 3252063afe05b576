package org.jawroom.reference.agree;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Random;
import java.util.TreeMap;
import org.jawroom.fixture.ShopCsv;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Length;
import org.jawroom.geometry.Orientation;
import org.jawroom.placement.pairing.Pairing;
import org.jawroom.placement.space.Place;
import org.jawroom.placement.standing.StandingOutcome;
import org.jawroom.placement.standing.StandingOutcome.Move;
import org.jawroom.placement.standing.StandingOutcome.Says;
import org.jawroom.placement.standing.StandingPairing;
import org.jawroom.placement.standing.StandingTable;
import org.jawroom.reference.model.RefLevel;
import org.jawroom.reference.model.RefMargin;
import org.jawroom.reference.model.RefModel;
import org.jawroom.reference.model.RefPair;
import org.jawroom.reference.model.RefRegion;
import org.jawroom.reference.random.RandomShops;
import org.jawroom.reference.random.RandomShops.Profile;
import org.jawroom.reference.solve.RefStanding;
import org.jawroom.reference.solve.RefStanding.Limiting;
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
 * Vises standing at random places of random shops, alone and beside another, against the second
 * solver; what that says of the margin is held against a comb of places within the tolerance.
 */
class StandingAgreementTest {
  private static final int SEEDS = 200;
  private static final int COMB = 6;

  /** Cases met. */
  private final Map<String, Integer> met = new TreeMap<>();

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
  void solve_randomPlaces_asTheSecondSolver(Profile profile) {
    for (long seed = 0; seed < SEEDS; seed++) {
      Shop shop = RandomShops.shop(profile, seed);
      RefModel model = model(shop);
      Random random = new Random(seed);
      for (RefRegion region : model.regions) {
        Standing standing = standing(random, shop, model, region);
        StandingOutcome found = StandingPairing.solve(shop.settings(), standing);
        String paste =
            profile + " seed " + seed + " " + standing.place() + " ± " + standing.tolerance();
        compare(shop, model, region, standing, found, paste + "\n" + ShopCsv.text(shop));
      }
    }
    assertMet(5, "off the slots", "exact", "below", "move", "stays", "shortfall");
    assertMet(1, "tolerance");
    assertTrue(met("fits") + met("limited") > 5, met::toString);
  }

  private void compare(
      Shop shop,
      RefModel model,
      RefRegion region,
      Standing standing,
      StandingOutcome found,
      String paste) {
    RefStanding second = new RefStanding(shop.settings(), standing);
    meet(found.says().word());
    move(second, standing, found, paste);
    assertEquals(second.isOnSlots(), found.says() != Says.OFF_SLOTS, paste);
    if (found.says() == Says.OFF_SLOTS) {
      Place nearest = found.nearest().orElseThrow();
      assertEquals(
          second.toSlots(),
          OptionalLong.of(
              Math.max(Math.abs(nearest.x() - standing.x()), Math.abs(nearest.y() - standing.y()))),
          paste);
      return;
    }
    long expected = second.margin();
    long tried = least(model.fields(region, model.wholeOpening()), standing);
    assertTrue(expected <= tried, expected + " although " + tried + " was found; " + paste);
    long margin = found.limit().isEmpty() ? RefMargin.NO_LIMIT : found.limit().get().margin();
    // What hits may be said to hit by up to the tolerance more.
    if (expected >= 0 || standing.tolerance() == 0) {
      meet("exact");
      meet(standing.tolerance() > 0 ? "tolerance" : "measured exactly");
      assertEquals(expected, margin, paste);
      assertEquals(
          second.limiting(),
          found
              .limit()
              .map(
                  limit ->
                      new Limiting(
                          limit.guard().name(),
                          limit.part().name(),
                          limit.axis(),
                          limit.situation(),
                          limit.margin())),
          paste);
    } else {
      meet("below");
      assertTrue(
          margin < 0 && margin <= expected && expected - margin <= standing.tolerance(),
          margin + " instead of " + expected + "; " + paste);
    }
    assertEquals(expected >= 0, found.says() == Says.FITS, paste);
    assertEquals(OptionalLong.of(second.shortfall()), found.reachShortfall(), paste);
    meet(second.shortfall() > 0 ? "shortfall" : "within reach");
    Optional<Interval> usable =
        expected >= 0
            ? Optional.of(standing.vise().opening())
            : second.usable().map(one -> Interval.of(one.printed().lo(), one.printed().hi()));
    assertEquals(usable, found.usable(), paste);
    assertEquals(expected < 0 && usable.isPresent(), found.says() == Says.LIMITED, paste);
  }

  private void move(RefStanding second, Standing standing, StandingOutcome found, String paste) {
    Optional<Move> expected =
        second
            .target()
            .map(to -> new Move(to.x() - standing.x(), to.y() - standing.y(), to.turn()));
    assertEquals(expected, found.move(), paste);
    meet(expected.isPresent() ? "move" : "stays");
  }

  /** Two of a kind, or different ones, side by side about as far as they must be. */
  @ParameterizedTest
  @EnumSource(
      value = Profile.class,
      names = {
        "PLAIN",
        "SLOTS_ALONG_Y",
        "BOTH_JAWS",
        "SHAPE_PARTS",
        "HANDLED",
        "LOW_HANDLE",
        "STRAPPED",
        "KEYED",
        "TOUCHING"
      })
  void solve_twoOnOneTable_asTheSecondSolver(Profile profile) {
    for (long seed = 0; seed < SEEDS; seed++) {
      Shop shop = RandomShops.shop(profile, seed);
      RefModel model = model(shop);
      Random random = new Random(seed);
      if (model.regions.isEmpty()) {
        continue;
      }
      Standing one = standing(random, shop, model, any(random, model.regions));
      Vise vise =
          random.nextBoolean()
              ? one.vise()
              : RandomShops.vise(RandomShops.shop(profile, seed + 1000));
      Settings settings = ReferencePairing.withoutHandRoom(shop.settings());
      RefModel its = RefModel.at(RefLevel.WORST, settings, one.machine(), vise, false);
      Orientation turn = any(random, List.of(Orientation.values()));
      String mount = its.regions.isEmpty() ? "base bolts" : any(random, its.regions).mount().name();
      Standing near =
          new Standing(
              one.machine(),
              vise,
              TapedPlace.of(
                  one.machine(),
                  vise,
                  turn,
                  one.x() + random.nextInt(-300, 301) * Length.MM,
                  one.y() + random.nextInt(-300, 301) * Length.MM),
              mount,
              new Provenance(random.nextInt(2) * Length.MM / 2, false, "", ""));
      RefStanding mine = new RefStanding(shop.settings(), one);
      long gap = mine.gapTo(new RefStanding(shop.settings(), near));
      // Moved to a half-nanometre more, exactly, or less than they must be apart, and as it is.
      for (long off : List.of(1L, 0L, -1L)) {
        long by = shop.settings().spacing() + off - gap;
        beside(shop, one, moved(near, by, 0, one), profile + " " + seed);
        beside(shop, one, moved(near, 0, by, one), profile + " " + seed);
      }
      beside(shop, one, near, profile + " " + seed);
    }
    assertMet(5, "apart", "close", "exactly the spacing", "just closer", "overlap");
  }

  /** Farther away along x and y; nearer where that is below 0. */
  private static Standing moved(Standing near, long byX, long byY, Standing from) {
    long x = near.x() + (near.x() >= from.x() ? byX : -byX);
    long y = near.y() + (near.y() >= from.y() ? byY : -byY);
    return new Standing(
        near.machine(),
        near.vise(),
        TapedPlace.of(near.machine(), near.vise(), near.place().handleTo(), x, y),
        near.mount(),
        near.provenance());
  }

  private void beside(Shop shop, Standing one, Standing other, String which) {
    String paste = which + " " + one.place() + " " + other.place() + "\n" + ShopCsv.text(shop);
    RefStanding mine = new RefStanding(shop.settings(), one);
    RefStanding its = new RefStanding(shop.settings(), other);
    long gap = mine.gapTo(its);
    assertEquals(gap, its.gapTo(mine), paste);
    long spacing = shop.settings().spacing();
    meet(gap < spacing ? "close" : "apart");
    meet(gap < 0 ? "overlap" : "none over another");
    meet(gap == spacing ? "exactly the spacing" : gap == spacing - 1 ? "just closer" : "else");
    List<StandingOutcome> found = StandingTable.solve(shop.settings(), List.of(one, other));
    for (StandingOutcome outcome : found) {
      assertEquals(
          gap < spacing ? List.of(OptionalLong.of(gap)) : List.of(),
          outcome.close().stream().map(StandingOutcome.Neighbour::gap).toList(),
          paste);
      assertTrue(outcome.close().stream().allMatch(StandingOutcome.Neighbour::sure), paste);
    }
  }

  private static RefModel model(Shop shop) {
    Machine machine = RandomShops.machine(shop);
    Vise vise = RandomShops.vise(shop);
    Settings settings = ReferencePairing.withoutHandRoom(shop.settings());
    return RefModel.at(RefLevel.WORST, settings, machine, vise, false);
  }

  private static <T> T any(Random random, List<T> all) {
    return all.get(random.nextInt(all.size()));
  }

  private void meet(String what) {
    met.merge(what, 1, Integer::sum);
  }

  private int met(String what) {
    return met.getOrDefault(what, 0);
  }

  private void assertMet(int least, String... cases) {
    for (String one : cases) {
      assertTrue(met(one) > least, () -> one + " in " + met);
    }
  }

  /** The least margin over a comb of places within the tolerance, its corners included. */
  private static long least(List<RefPair.Field> fields, Standing standing) {
    long least = RefMargin.NO_LIMIT;
    long t = standing.tolerance();
    for (int i = 0; i <= COMB; i++) {
      for (int j = 0; j <= COMB; j++) {
        long x = standing.x() - t + 2 * t * i / COMB;
        long y = standing.y() - t + 2 * t * j / COMB;
        for (RefPair.Field field : fields) {
          least = Math.min(least, field.margin(x, y));
        }
      }
    }
    return least;
  }

  /** Often at the best place of its turn, and in one of four cases beside what holds it. */
  private static Standing standing(Random random, Shop shop, RefModel model, RefRegion region) {
    Span xs = region.xs().get(random.nextInt(region.xs().size()));
    Span ys = region.ys().get(random.nextInt(region.ys().size()));
    long off = random.nextInt(4) == 0 ? 3 * Length.MM : 0;
    Place best =
        Pairing.solve(shop.settings(), model.machine, model.vise)
            .recommended()
            .filter(place -> place.handleTo() == region.turn())
            .map(place -> new Place(place.x(), place.y()))
            .orElseGet(() -> new Place(point(random, xs), point(random, ys)));
    boolean aside = random.nextInt(3) == 0;
    long x = (aside ? point(random, xs) : best.x()) + off;
    long y = (aside ? point(random, ys) : best.y()) + off;
    long tolerance = any(random, List.of(0L, 0L, 1L, Length.MM / 100, Length.MM / 2));
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
