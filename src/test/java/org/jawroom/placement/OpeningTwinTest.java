package org.jawroom.placement;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.jawroom.clearance.Situation;
import org.jawroom.clearance.guard.SweptGuard;
import org.jawroom.clearance.obstacle.SweptGuards;
import org.jawroom.clearance.obstacle.SweptParts;
import org.jawroom.clearance.part.Part;
import org.jawroom.fixture.outcome.MadePlaces;
import org.jawroom.fixture.outcome.NamedPieces;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Box;
import org.jawroom.geometry.Fraction;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.OpeningInterval;
import org.jawroom.geometry.Orientation;
import org.jawroom.geometry.Rectangle;
import org.jawroom.placement.bolting.Region;
import org.jawroom.placement.opening.OpeningRange;
import org.jawroom.placement.opening.OpeningSearch;
import org.jawroom.placement.space.Place;
import org.jawroom.placement.space.Strips;
import org.junit.jupiter.api.Test;

/**
 * {@link OpeningSearch} against exhaustive search over positions and pairs of openings.
 *
 * <p>World coordinates are multiples of 24 and the slopes of the limits 0, ±1/2 or 1. Two bounds
 * then intersect at multiples of 4 along u and bound the opening at multiples of 2, so the lattice
 * contains every vertex, and the widest range on it is the widest overall.
 */
class OpeningTwinTest {
  private static final int UNIT = 24;
  private static final Interval FULL = Interval.of(0, 6 * UNIT);

  @Test
  void widest_smallWorlds_isTheWidestOfAllTried() {
    int found = 0;
    for (int seed = 0; seed < 250; seed++) {
      Region region = region(new Random(seed));
      OpeningRange fast = OpeningSearch.widest(List.of(region), FULL);
      long[] slow = slow(region);
      String input = "seed " + seed + ": " + region;
      if (slow == null) {
        assertEquals(OpeningRange.EMPTY, fast, input);
      } else {
        found++;
        assertEquals(0, fast.from().compareTo(Fraction.of(slow[0], FULL.length())), input);
        assertEquals(0, fast.to().compareTo(Fraction.of(slow[1], FULL.length())), input);
      }
    }
    assertEquals(true, found > 50 && found < 250, "a fair mix, but found " + found);
  }

  /** The widest range on the lattice, ties to the first start; null if there is none. */
  private static long[] slow(Region region) {
    long[] widest = null;
    Orientation turn = region.turn();
    for (Rectangle places : region.places().rectangles()) {
      Interval along = places.along(turn.uAxis());
      Interval across = places.along(turn.uAxis().across());
      for (long p = along.lo(); p <= along.hi(); p += 4) {
        for (long q = across.lo(); q <= across.hi(); q += UNIT) {
          Place place = turn.uAxis() == Axis.X ? new Place(p, q) : new Place(q, p);
          for (long s0 = FULL.lo(); s0 <= FULL.hi(); s0 += 2) {
            for (long s1 = FULL.hi(); s1 >= s0; s1 -= 2) {
              long width = widest == null ? -1 : widest[1] - widest[0];
              if (s1 - s0 < width || s1 - s0 == width && s0 >= widest[0]) {
                break;
              }
              if (SmallWorlds.margin(region, Interval.of(s0, s1), place) >= 0) {
                widest = new long[] {s0, s1};
                break;
              }
            }
          }
        }
      }
    }
    return widest;
  }

  private static Region region(Random random) {
    List<Part> parts = new ArrayList<>();
    for (int i = random.nextInt(2) + 1; i > 0; i--) {
      Interval closed = interval(random, 4);
      long low = closed.lo() + slope(random) * 3 * UNIT;
      Interval open = Interval.of(low, Math.max(low, closed.hi() + slope(random) * 3 * UNIT));
      if (open.hi() - closed.hi() != 0 && (open.hi() - closed.hi()) % (3 * UNIT) != 0) {
        open = closed.plus(open.lo() - closed.lo());
      }
      parts.add(
          NamedPieces.part(
              "part " + i,
              i,
              false,
              Situation.CUTTING,
              new OpeningInterval(closed, open, FULL),
              interval(random, 3),
              interval(random, 3),
              0));
    }
    List<SweptGuard> guards = new ArrayList<>();
    for (int i = random.nextInt(4) + 1; i > 0; i--) {
      Box box = new Box(interval(random, 7), interval(random, 7), interval(random, 5));
      guards.add(NamedPieces.guard("guard " + i, -i, false, Situation.CUTTING, box, 0, 0));
    }
    Strips places = Strips.of(Axis.X, new Rectangle(interval(random, 3), interval(random, 3)));
    Orientation turn = Orientation.values()[random.nextInt(4)];
    return new Region(
        turn,
        MadePlaces.bolted("mount"),
        places,
        Region.EVERYWHERE,
        Region.EVERYWHERE,
        SweptParts.of(parts, FULL),
        SweptGuards.of(guards, 0));
  }

  /** In halves. */
  private static int slope(Random random) {
    return new int[] {-1, 0, 1, 2}[random.nextInt(4)];
  }

  private static Interval interval(Random random, int half) {
    int lo = random.nextInt(2 * half) - half;
    return Interval.of((long) lo * UNIT, (long) (lo + random.nextInt(half)) * UNIT);
  }
}
