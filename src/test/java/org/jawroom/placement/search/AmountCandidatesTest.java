package org.jawroom.placement.search;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedSet;
import org.jawroom.clearance.gap.Pair;
import org.jawroom.clearance.guard.SweptGuard;
import org.jawroom.clearance.obstacle.SweptGuards;
import org.jawroom.fixture.Guards;
import org.jawroom.fixture.outcome.NamedPieces;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Box;
import org.jawroom.geometry.Interval;
import org.jawroom.placement.SmallWorlds;
import org.jawroom.placement.bolting.Region;
import org.jawroom.placement.space.Place;
import org.jawroom.shop.machine.Guard;
import org.junit.jupiter.api.Test;

/**
 * Every amount that serves while one less does not must be among the candidates: all amounts and
 * positions of small worlds are tried.
 */
class AmountCandidatesTest {
  private static final Interval OPENINGS = Interval.of(0, 6);
  private static final int MOST = 40;
  private static final int SEEDS = 1_500;

  @Test
  void risers_smallWorlds_haveEveryHeightAtWhichSomethingComesClear() {
    int begun = 0;
    for (int seed = 0; seed < SEEDS; seed++) {
      List<Region> regions = regions(seed);
      begun += begins(regions, Change.RISE, "", AmountCandidates.risers(regions), "seed " + seed);
    }
    assertTrue(begun > SEEDS / 20, "only " + begun);
  }

  @Test
  void lifts_smallWorlds_haveEveryHeightAtWhichSomethingComesClear() {
    int begun = 0;
    for (int seed = 0; seed < SEEDS; seed++) {
      List<Region> regions = regions(seed);
      for (String guard : List.of("guard 1", "guard 2")) {
        SortedSet<Long> amounts = AmountCandidates.lifts(regions, named(regions, guard));
        begun += begins(regions, Change.LIFT, guard, amounts, "seed " + seed + " " + guard);
      }
    }
    assertTrue(begun > SEEDS / 20, "only " + begun);
  }

  @Test
  void moves_smallWorlds_haveEveryWayAtWhichSomethingComesClear() {
    int begun = 0;
    for (int seed = 0; seed < SEEDS; seed++) {
      List<Region> regions = regions(seed);
      for (Change change : List.of(Change.RIGHT, Change.LEFT, Change.REAR, Change.FRONT)) {
        Axis axis = change == Change.RIGHT || change == Change.LEFT ? Axis.X : Axis.Y;
        boolean up = change == Change.RIGHT || change == Change.REAR;
        SortedSet<Long> amounts =
            AmountCandidates.moves(regions, OPENINGS, named(regions, "guard 1"), axis, up);
        begun += begins(regions, change, "guard 1", amounts, "seed " + seed + " " + change);
      }
    }
    assertTrue(begun > SEEDS / 20, "only " + begun);
  }

  private static final Box NOWHERE =
      new Box(Interval.of(0, 0), Interval.of(0, 0), Interval.of(0, 0));

  /** The guard of a small world; an unknown one if the world has none. */
  private static Guard named(List<Region> regions, String name) {
    return regions.get(0).guards().all().stream()
        .flatMap(guard -> guard.guard().stream())
        .filter(guard -> guard.name().equals(name))
        .findFirst()
        .orElseGet(() -> Guards.box(name, NOWHERE));
  }

  private enum Change {
    RISE,
    LIFT,
    RIGHT,
    LEFT,
    REAR,
    FRONT;

    Box guard(Box box, long by) {
      return switch (this) {
        case RISE -> box;
        case LIFT -> new Box(box.x(), box.y(), box.z().plus(by));
        case RIGHT -> box.at(by, 0);
        case LEFT -> box.at(-by, 0);
        case REAR -> box.at(0, by);
        case FRONT -> box.at(0, -by);
      };
    }
  }

  /** Counts the amounts that serve while one less does not; each must be in {@code amounts}. */
  private static int begins(
      List<Region> regions, Change change, String guard, SortedSet<Long> amounts, String seed) {
    int begun = 0;
    boolean before = serves(regions, change, guard, 0);
    for (long amount = 1; amount <= MOST; amount++) {
      boolean now = serves(regions, change, guard, amount);
      if (now && !before) {
        begun++;
        assertTrue(amounts.contains(amount), seed + ": " + amount + " not in " + amounts);
      }
      before = now;
    }
    return begun;
  }

  private static boolean serves(List<Region> regions, Change change, String guard, long amount) {
    for (Region region : regions) {
      List<Pair> pairs = region.pairs();
      for (Place place : SmallWorlds.placesOf(region)) {
        if (isClear(pairs, region, place, change, guard, amount)) {
          return true;
        }
      }
    }
    return false;
  }

  private static boolean isClear(
      List<Pair> pairs, Region region, Place place, Change change, String guard, long amount) {
    for (Pair pair : pairs) {
      Box part = pair.part().over(OPENINGS, region.turn()).at(place.x(), place.y());
      Box box = pair.guard().box();
      if (change == Change.RISE) {
        if (pair.guard().table() && pair.part().w().lo() + amount >= 0) {
          continue;
        }
        part = new Box(part.x(), part.y(), part.z().plus(amount));
      } else if (pair.guard().name().equals(guard)) {
        box = change.guard(box, amount);
      }
      if (part.gapTo(box) < pair.required() + pair.tolerance()) {
        return false;
      }
    }
    return true;
  }

  /** One or two turns; in every third world the first guard is the table. */
  private static List<Region> regions(int seed) {
    SmallWorlds worlds = new SmallWorlds(seed);
    Region first = worlds.region(worlds.turn(), 0, OPENINGS);
    if (seed % 3 == 0) {
      first = withTable(first);
    }
    Region other = worlds.region(worlds.turn(), 0, OPENINGS);
    // The guards are the machine's, so those of both turns are the same.
    Region second =
        new Region(
            other.turn(),
            other.fastening(),
            other.places(),
            Region.EVERYWHERE,
            Region.EVERYWHERE,
            other.swept(),
            first.guards());
    return worlds.below(2) == 0 ? List.of(first) : List.of(first, second);
  }

  private static Region withTable(Region region) {
    List<SweptGuard> guards = new ArrayList<>();
    for (SweptGuard guard : region.guards().all()) {
      guards.add(
          NamedPieces.guard(
              guard.name(),
              guard.rank(),
              guard.rank() == 0,
              guard.situation(),
              guard.box(),
              guard.clearance(),
              guard.tolerance()));
    }
    return new Region(
        region.turn(),
        region.fastening(),
        region.places(),
        Region.EVERYWHERE,
        Region.EVERYWHERE,
        region.swept(),
        SweptGuards.of(guards, 0));
  }
}
