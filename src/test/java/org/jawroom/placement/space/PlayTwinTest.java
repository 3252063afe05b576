package org.jawroom.placement.space;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.function.BiFunction;
import java.util.function.LongFunction;
import org.jawroom.geometry.Box;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Rectangle;
import org.jawroom.placement.SmallWorlds;
import org.jawroom.placement.bolting.Region;
import org.junit.jupiter.api.Test;

/** {@link FreeSpace#play} against a step-by-step walk. */
class PlayTwinTest {
  private static final Interval OPENINGS = Interval.of(0, 6);

  @Test
  void from_smallWorlds_goesAsFarAsOneCanWalk() {
    assertWalked(SmallWorlds::new, 0);
  }

  /** Two objects without thickness do not obstruct each other. */
  @Test
  void from_worldsOfThinThings_goesAsFarAsOneCanWalk() {
    assertWalked(SmallWorlds::thin, 0);
  }

  @Test
  void from_worldsWithTapRoom_keepsItAllTheWay() {
    assertWalked(SmallWorlds::new, 1);
    assertWalked(SmallWorlds::thin, 2);
  }

  /** The vise may go where the search did not look, from a tapped place, too. */
  @Test
  void from_aSearchLimitedToThePlace_goesAsFarAsOneCanWalk() {
    assertWalked(
        SmallWorlds::new,
        0,
        (region, place) -> {
          Rectangle here =
              new Rectangle(Interval.of(place.x(), place.x()), Interval.of(place.y(), place.y()));
          FreeSpace only = region.spaceBelowZero(OPENINGS).within(here).orElseThrow();
          return only.tapped(region.places().meet(here).orElseThrow(), 1).whole();
        });
  }

  private static void assertWalked(LongFunction<SmallWorlds> of, long tap) {
    assertWalked(
        of,
        tap,
        (region, place) -> {
          FreeSpace whole = region.space(OPENINGS);
          return tap == 0 ? whole : whole.tapped(region.places(), tap);
        });
  }

  private static void assertWalked(
      LongFunction<SmallWorlds> of, long tap, BiFunction<Region, Place, FreeSpace> spaceAt) {
    int tried = 0;
    for (int seed = 0; seed < 3_000; seed++) {
      SmallWorlds worlds = of.apply(seed);
      Region region = worlds.region(worlds.turn(), 0, OPENINGS);
      Rectangle allowed = region.places().rectangles().get(0);
      for (Place place : SmallWorlds.placesOf(region)) {
        if (allowed.contains(place.x(), place.y())
            && !hits(region, tap, 2 * place.x(), 2 * place.y())
            && worlds.below(20) == 0) {
          tried++;
          Play expected =
              new Play(
                  walk(region, tap, allowed, place, -1, 0),
                  walk(region, tap, allowed, place, 1, 0),
                  walk(region, tap, allowed, place, 0, -1),
                  walk(region, tap, allowed, place, 0, 1));
          assertEquals(
              expected,
              spaceAt.apply(region, place).play(place, allowed),
              "seed " + seed + " " + place + " " + region);
        }
      }
    }
    assertEquals(true, tried > 1_000, "only " + tried);
  }

  private static long walk(Region region, long tap, Rectangle allowed, Place from, int dx, int dy) {
    long most = Math.max(allowed.x().length(), allowed.y().length());
    for (long steps = 0; steps <= most; steps++) {
      Place next = new Place(from.x() + (steps + 1) * dx, from.y() + (steps + 1) * dy);
      // Half steps too: a forbidden band between two lattice positions would be skipped otherwise.
      if (!allowed.contains(next.x(), next.y())
          || hits(region, tap, 2 * next.x() - dx, 2 * next.y() - dy)
          || hits(region, tap, 2 * next.x(), 2 * next.y())) {
        return steps;
      }
    }
    throw new AssertionError("beyond " + allowed);
  }

  /**
   * Whether, in the world scaled by 2, any pair has less than its required clearance and tolerance,
   * of which along x and y the tap room is taken off.
   */
  private static boolean hits(Region region, long tap, long x, long y) {
    return region.pairs().stream()
        .anyMatch(
            pair -> {
              Box part = doubled(pair.part().over(OPENINGS, region.turn())).at(x, y);
              long need = 2 * (pair.required() + pair.tolerance());
              Box guard = doubled(pair.guard().box());
              long beside = Math.max(gap(part.x(), guard.x()), gap(part.y(), guard.y()));
              return Math.max(beside - 2 * tap, gap(part.z(), guard.z())) < need;
            });
  }

  private static long gap(Interval one, Interval other) {
    return Math.max(other.lo() - one.hi(), one.lo() - other.hi());
  }

  private static Box doubled(Box box) {
    return new Box(doubled(box.x()), doubled(box.y()), doubled(box.z()));
  }

  private static Interval doubled(Interval interval) {
    return Interval.of(2 * interval.lo(), 2 * interval.hi());
  }
}
