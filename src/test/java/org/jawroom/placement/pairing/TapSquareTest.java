package org.jawroom.placement.pairing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.jawroom.clearance.gap.Limit;
import org.jawroom.fixture.ShopCsv;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Box;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Length;
import org.jawroom.placement.search.Recommendation;
import org.jawroom.placement.space.Place;
import org.jawroom.reference.random.RandomShops;
import org.jawroom.reference.random.RandomShops.Profile;
import org.jawroom.shop.Shop;
import org.junit.jupiter.api.Test;

/** The swing against a vise that is really turned, step by step, and the lever by hand. */
class TapSquareTest {
  private static final int SEEDS = 150;
  private static final int STEPS = 40;

  private int swung;
  private int small;
  private int tight;

  @Test
  void of_randomShops_swingPivotAndLeverAreThoseOfTheTurnedVise() {
    for (Profile profile : Profile.values()) {
      for (long seed = 0; seed < SEEDS; seed++) {
        Shop shop = RandomShops.shop(profile, seed);
        Optional<Turned> turned = turned(shop);
        if (turned.isPresent()) {
          String input =
              profile + " seed " + seed + " " + turned.get().tap + "\n" + ShopCsv.text(shop);
          assertPivotAndLever(turned.get(), input);
          if (turned.get().tap.swing() > 0) {
            assertSwing(turned.get(), input);
          }
        }
      }
    }
    assertTrue(swung > 1_000, "only " + swung);
    assertTrue(small > 10 && 2 * tight > small, tight + " of " + small);
  }

  /**
   * Every part's corners are turned, either way, in steps up to the swing: nothing comes too near.
   * Of most small swings, what a turned vise has is at most a ninth more.
   */
  private void assertSwing(Turned turned, String input) {
    long swing = turned.tap.swing();
    for (int step = -STEPS; step <= STEPS; step++) {
      assertTrue(turned.isClear((double) step / STEPS * swing), input);
    }
    swung++;
    if (20 * swing < turned.radius()) {
      double more = swing / 0.9;
      tight += turned.isClear(more) && turned.isClear(-more) ? 0 : 1;
      small++;
    }
  }

  /** The pivot is the bolt farthest from the far end of the jaw. */
  private static void assertPivotAndLever(Turned turned, String input) {
    TapSquare tap = turned.tap;
    Place middle = new Place(turned.place.x(), turned.place.y());
    assertEquals(turned.layout.bolts().get(tap.pivot()), tap.at(), input);
    long end = along(tap.jaw(), middle) + (tap.zeroLow() ? 1 : -1) * tap.jawWidth() / 2;
    assertEquals(tap.lever(), Math.abs(end - along(tap.jaw(), tap.at())), input);
    for (Place bolt : turned.layout.bolts()) {
      long off = Math.abs(along(tap.jaw(), bolt) - along(tap.jaw(), middle));
      assertTrue(off + tap.jawWidth() / 2 <= tap.lever(), input);
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
