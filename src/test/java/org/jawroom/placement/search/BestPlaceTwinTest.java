package org.jawroom.placement.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.jawroom.geometry.Box;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Orientation;
import org.jawroom.geometry.Rectangle;
import org.jawroom.placement.SmallWorlds;
import org.jawroom.placement.bolting.Fastening;
import org.jawroom.placement.bolting.Region;
import org.jawroom.placement.space.FreeSpace;
import org.jawroom.placement.space.Place;
import org.jawroom.placement.space.Window;
import org.junit.jupiter.api.Test;

/** {@link BestPlace} and {@link FreeSpace} against exhaustive search on the lattice. */
class BestPlaceTwinTest {
  private static final Interval OPENINGS = Interval.of(0, 6);

  private int boltedBeforeClamped;
  private int settableBeforeNot;
  private int notSettable;
  private int clampedWithinReach;

  @Test
  void recommended_smallWorlds_isTheFirstInTheOrderOfPreference() {
    for (int seed = 0; seed < 6_000; seed++) {
      SmallWorlds worlds = new SmallWorlds(seed);
      Rectangle reach = worlds.reach();
      long tap = Math.max(0, worlds.below(8) - 2);
      List<Candidate> seats = new ArrayList<>();
      for (Orientation turn : Orientation.values()) {
        if (worlds.below(2) == 0 || turn == Orientation.LEFT) {
          int mounts = 1 + worlds.below(2);
          for (int mount = 0; mount < mounts; mount++) {
            Region region = worlds.region(turn, mount, OPENINGS);
            boolean last = mount == mounts - 1;
            seats.add(
                worlds.seat(
                    last && worlds.below(3) == 0 ? clamped(region) : region, OPENINGS, reach, tap));
          }
        }
      }
      BestPlace fast = new BestPlace(seats);
      String input =
          "seed "
              + seed
              + ": "
              + seats.stream().map(Candidate::region).toList()
              + " "
              + reach
              + " tap room "
              + tap;

      long best = fast.bestMargin();
      BestPlace.Choice choice = fast.recommended();

      Tried expected = slow(seats, tap);
      assertEquals(slowBestMargin(seats), best, input);
      assertEquals(best >= 0, fast.isClear(), input);
      assertEquals(expected.place, choice.place(), input);
      assertEquals(expected.margin, choice.margin(), input);
      assertEquals(expected.shortfall, choice.seat().shortfall(choice.place()), input);
      assertEquals(seats.get(expected.seat).region(), choice.seat().region(), input);
      if (best >= 0) {
        assertEquals(expected.settable, choice.seat().isSettable(), input);
      }
      assertNearest(all(seats, tap), seats, input);
    }
    assertTrue(clampedWithinReach > 20, "clamped within reach " + clampedWithinReach);
    assertTrue(boltedBeforeClamped > 100, "bolted before clamped " + boltedBeforeClamped);
    assertTrue(settableBeforeNot > 100, "settable before not " + settableBeforeNot);
    assertTrue(notSettable > 100, "not settable " + notSettable);
  }

  /** The least shortfall first, whatever it takes, then the order of preference. */
  private void assertNearest(List<Tried> all, List<Candidate> seats, String input) {
    List<Tried> clear = all.stream().filter(tried -> tried.margin >= 0).toList();
    OptionalLong least = clear.stream().mapToLong(Tried::shortfall).min();
    BestPlace fast = new BestPlace(seats);
    assertEquals(least, fast.leastShortfall(), input);
    if (least.isPresent()) {
      List<Tried> nearest =
          clear.stream().filter(tried -> tried.shortfall == least.getAsLong()).toList();
      Tried expected = nearest.stream().min(order(true)).orElseThrow();
      BestPlace.Choice choice = fast.recommendedOf(least.getAsLong());
      assertEquals(expected.place, choice.place(), input);
      assertEquals(expected.margin, choice.margin(), input);
      assertEquals(seats.get(expected.seat).region(), choice.seat().region(), input);
      assertEquals(expected.settable, choice.seat().isSettable(), input);
      clampedWithinReach +=
          expected.clamped && clear.stream().anyMatch(tried -> !tried.clamped) ? 1 : 0;
    }
  }

  private static Region clamped(Region region) {
    Fastening bolts = region.fastening();
    return new Region(
        region.turn(),
        new Fastening(bolts.index(), Fastening.CLAMPS, true, OptionalLong.empty(), bolts.anchors()),
        region.places(),
        region.onTable(),
        region.allowed(),
        region.swept(),
        region.guards());
  }

  @Test
  void find_smallWorlds_findsAPlaceExactlyWhereThereIsOne() {
    for (int seed = 0; seed < 4_000; seed++) {
      SmallWorlds worlds = new SmallWorlds(seed);
      Region region = worlds.region(worlds.turn(), 0, OPENINGS);
      Candidate seat = worlds.seat(region, OPENINGS, worlds.reach());
      long margin = worlds.below(14) - 7;
      Interval x = worlds.interval(SmallWorlds.HALF);
      Interval y = worlds.interval(SmallWorlds.HALF);
      Window window = new Window(x.lo(), x.hi(), y.lo(), y.hi());

      List<Place> expected =
          SmallWorlds.placesOf(region).stream()
              .filter(place -> x.contains(place.x()) && y.contains(place.y()))
              .filter(place -> SmallWorlds.margin(region, OPENINGS, place) >= margin)
              .toList();

      String input = "seed " + seed + ": " + region + " margin " + margin + " in " + window;
      assertEquals(!expected.isEmpty(), seat.space().isClear(margin, window), input);
      Optional.ofNullable(seat.space().find(margin, window))
          .ifPresent(place -> assertEquals(true, expected.contains(place), input));
    }
  }

  /** A position with the values that the order of preference compares. */
  private record Tried(
      int seat,
      Place place,
      boolean clamped,
      boolean settable,
      long margin,
      long shortfall,
      long offX,
      long offY) {}

  private static List<Tried> all(List<Candidate> seats, long tap) {
    List<Tried> all = new ArrayList<>();
    for (int i = 0; i < seats.size(); i++) {
      Candidate seat = seats.get(i);
      for (Place place : SmallWorlds.placesOf(seat.region())) {
        all.add(
            new Tried(
                i,
                place,
                seat.region().fastening().clamped(),
                isSettable(seat.region(), place, tap),
                SmallWorlds.margin(seat.region(), OPENINGS, place),
                seat.shortfall(place),
                Math.abs((place.x() - seat.midX())),
                Math.abs((place.y() - seat.midY()))));
      }
    }
    return all;
  }

  private static long slowBestMargin(List<Candidate> seats) {
    return all(seats, 0).stream().mapToLong(Tried::margin).max().orElseThrow();
  }

  /** Every pair keeps max(gap_x − t, gap_y − t, gap_z) at or above what it asks for. */
  private static boolean isSettable(Region region, Place place, long tap) {
    return region.pairs().stream()
        .allMatch(
            pair -> {
              Box part = pair.part().over(OPENINGS, region.turn()).at(place.x(), place.y());
              Box guard = pair.guard().box();
              long beside = Math.max(part.x().gapTo(guard.x()), part.y().gapTo(guard.y())) - tap;
              return Math.max(beside, part.z().gapTo(guard.z()))
                  >= pair.required() + pair.tolerance();
            });
  }

  private Tried slow(List<Candidate> seats, long tap) {
    List<Tried> all = all(seats, tap);
    boolean clear = all.stream().anyMatch(tried -> tried.margin >= 0);
    List<Tried> held = all.stream().filter(tried -> !clear || tried.margin >= 0).toList();
    Tried best = held.stream().min(order(clear)).orElseThrow();
    if (clear) {
      boltedBeforeClamped += !best.clamped && held.stream().anyMatch(Tried::clamped) ? 1 : 0;
      settableBeforeNot += best.settable && !held.stream().allMatch(Tried::settable) ? 1 : 0;
      notSettable += best.settable ? 0 : 1;
    }
    return best;
  }

  private static Comparator<Tried> order(boolean clear) {
    Comparator<Tried> byMargin = Comparator.comparingLong((Tried tried) -> -tried.margin);
    Comparator<Tried> byShortfall = Comparator.comparingLong(Tried::shortfall);
    Comparator<Tried> byMount =
        Comparator.comparing(Tried::clamped).thenComparing(tried -> !tried.settable);
    return (clear
            ? byMount.thenComparing(byShortfall).thenComparing(byMargin)
            : byMargin.thenComparing(byShortfall))
        .thenComparingLong(tried -> Math.max(tried.offX, tried.offY))
        .thenComparingLong(Tried::offY)
        .thenComparingLong(Tried::offX)
        .thenComparingLong(tried -> -tried.place.y())
        .thenComparingLong(tried -> -tried.place.x())
        .thenComparingInt(Tried::seat);
  }
}
