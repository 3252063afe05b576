package org.jawroom.placement.pairing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.jawroom.clearance.gap.Limit;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Box;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Length;
import org.jawroom.placement.search.Recommendation;
import org.jawroom.placement.space.Place;
import org.jawroom.reference.RandomShops;
import org.jawroom.reference.RandomShops.Profile;
import org.jawroom.reference.ShopCsv;
import org.jawroom.shop.Shop;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The swing against a vise that is really turned, step by step, and the lever by hand. */
class TapSquareTest {
  private static final int SEEDS = 150;
  private static final int STEPS = 40;

  /** Every part's corners are turned, either way, in steps up to the swing: nothing too near. */
  @ParameterizedTest
  @EnumSource(Profile.class)
  void swing_randomShops_turnedThatFarNothingComesTooNear(Profile profile) {
    for (long seed = 0; seed < SEEDS; seed++) {
      Shop shop = RandomShops.shop(profile, seed);
      Optional<Turned> turned = turned(shop);
      if (turned.isPresent()) {
        TapSquare tap = turned.get().tap;
        String input = profile + " seed " + seed + " " + tap + "\n" + ShopCsv.text(shop);
        for (int step = -STEPS; step <= STEPS && tap.swing() > 0; step++) {
          assertTrue(turned.get().isClear((double) step / STEPS * tap.swing()), input);
        }
      }
    }
  }

  /** Of most small swings, what a turned vise has is at most a ninth more. */
  @Test
  void swing_smallOnes_isMostlyAllThereIs() {
    int checked = 0;
    int tight = 0;
    for (Profile profile : Profile.values()) {
      for (long seed = 0; seed < SEEDS; seed++) {
        Shop shop = RandomShops.shop(profile, seed);
        Optional<Turned> turned = turned(shop);
        if (turned.isPresent()
            && turned.get().tap.swing() > 0
            && 20 * turned.get().tap.swing() < turned.get().radius()) {
          double more = turned.get().tap.swing() / 0.9;
          if (!turned.get().isClear(more) || !turned.get().isClear(-more)) {
            tight++;
          }
          checked++;
        }
      }
    }
    assertTrue(checked > 10 && 2 * tight > checked, tight + " of " + checked);
  }

  @ParameterizedTest
  @EnumSource(Profile.class)
  void pivot_randomShops_isTheBoltFarthestFromTheFarEnd(Profile profile) {
    for (long seed = 0; seed < SEEDS; seed++) {
      Shop shop = RandomShops.shop(profile, seed);
      turned(shop)
          .ifPresent(
              turned -> {
                TapSquare tap = turned.tap;
                Place middle = new Place(turned.place.x(), turned.place.y());
                assertEquals(turned.layout.bolts().get(tap.pivot()), tap.at());
                long end = along(tap.jaw(), middle) + (tap.zeroLow() ? 1 : -1) * tap.jawWidth() / 2;
                assertEquals(tap.lever(), Math.abs(end - along(tap.jaw(), tap.at())));
                for (Place bolt : turned.layout.bolts()) {
                  long off = Math.abs(along(tap.jaw(), bolt) - along(tap.jaw(), middle));
                  assertTrue(off + tap.jawWidth() / 2 <= tap.lever());
                }
              });
    }
  }

  private static Optional<Turned> turned(Shop shop) {
    SolvedPairing solved =
        Pairing.solved(shop.settings(), RandomShops.machine(shop), RandomShops.vise(shop));
    return solved
        .inspection()
        .map(
            closer -> {
              Recommendation place = solved.outcome().recommended().orElseThrow();
              return new Turned(
                  place,
                  closer.layout(),
                  closer.pairs(),
                  TapSquare.of(solved.outcome().vise(), place, closer.layout(), closer.pairs()));
            });
  }

  private static long along(Axis axis, Place place) {
    return axis == Axis.X ? place.x() : place.y();
  }

  private record Turned(Recommendation place, Layout layout, List<Limit> pairs, TapSquare tap) {

    /** From the pivot to the far end of the jaw. */
    double radius() {
      double across =
          along(tap.jaw().across(), tap.at())
              - along(tap.jaw().across(), new Place(place.x(), place.y()));
      return Math.hypot(tap.lever(), across);
    }

    /** Whether nothing is too near when the far end has moved straight by that much. */
    boolean isClear(double moved) {
      double angle = 2 * Math.asin(moved / 2 / radius());
      return pairs.stream().allMatch(pair -> isClear(pair, angle));
    }

    private boolean isClear(Limit pair, double angle) {
      Box part = pair.partBox();
      double[] x = {Double.MAX_VALUE, -Double.MAX_VALUE};
      double[] y = {Double.MAX_VALUE, -Double.MAX_VALUE};
      for (long cornerX : new long[] {part.x().lo(), part.x().hi()}) {
        for (long cornerY : new long[] {part.y().lo(), part.y().hi()}) {
          double dx = cornerX - tap.at().x();
          double dy = cornerY - tap.at().y();
          double toX = tap.at().x() + dx * Math.cos(angle) - dy * Math.sin(angle);
          double toY = tap.at().y() + dx * Math.sin(angle) + dy * Math.cos(angle);
          x = new double[] {Math.min(x[0], toX), Math.max(x[1], toX)};
          y = new double[] {Math.min(y[0], toY), Math.max(y[1], toY)};
        }
      }
      double gap =
          Math.max(
              part.z().gapTo(pair.guardBox().z()),
              Math.max(gap(x, pair.guardBox().x()), gap(y, pair.guardBox().y())));
      // A thousandth of a nanometre for the rounding of doubles; far ends of guards are coarser.
      return gap >= pair.required() + pair.tolerance() - Length.MM / 1e9
          || Math.abs(gap) > Length.ENDLESS / 4.0;
    }

    private static double gap(double[] part, Interval guard) {
      return Math.max(guard.lo() - part[1], part[0] - guard.hi());
    }
  }
}
