package org.jawroom.placement.search;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Orientation;
import org.jawroom.geometry.Rectangle;
import org.jawroom.placement.SmallWorlds;
import org.jawroom.placement.bolting.Region;
import org.jawroom.placement.space.FreeSpace;
import org.jawroom.placement.space.Place;
import org.jawroom.placement.space.Window;
import org.junit.jupiter.api.Test;

/** {@link BestPlace} and {@link FreeSpace} against exhaustive search on the lattice. */
class BestPlaceTwinTest {
  private static final Interval OPENINGS = Interval.of(0, 6);

  @Test
  void recommended_smallWorlds_isTheFirstInTheOrderOfPreference() {
    for (int seed = 0; seed < 4_000; seed++) {
      SmallWorlds worlds = new SmallWorlds(seed);
      Rectangle reach = worlds.reach();
      List<Candidate> seats = new ArrayList<>();
      for (Orientation turn : Orientation.values()) {
        if (worlds.below(2) == 0 || turn == Orientation.LEFT) {
          for (int mount = 0; mount <= worlds.below(2); mount++) {
            seats.add(worlds.seat(worlds.region(turn, mount, OPENINGS), OPENINGS, reach));
          }
        }
      }
      BestPlace fast = new BestPlace(seats);
      String input =
          "seed " + seed + ": " + seats.stream().map(Candidate::region).toList() + " " + reach;

      long best = fast.bestMargin();
      BestPlace.Choice choice = fast.recommended();

      Tried expected = slow(seats);
      assertEquals(slowBestMargin(seats), best, input);
      assertEquals(best >= 0, fast.isClear(), input);
      assertEquals(expected.place, choice.place(), input);
      assertEquals(expected.margin, choice.margin(), input);
      assertEquals(expected.shortfall, choice.seat().shortfall(choice.place()), input);
      assertEquals(expected.seat, seats.indexOf(choice.seat()), input);
    }
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
  private record Tried(int seat, Place place, long margin, long shortfall, long offX, long offY) {}

  private static List<Tried> all(List<Candidate> seats) {
    List<Tried> all = new ArrayList<>();
    for (int i = 0; i < seats.size(); i++) {
      Candidate seat = seats.get(i);
      for (Place place : SmallWorlds.placesOf(seat.region())) {
        all.add(
            new Tried(
                i,
                place,
                SmallWorlds.margin(seat.region(), OPENINGS, place),
                seat.shortfall(place),
                Math.abs((place.x() - seat.midX())),
                Math.abs((place.y() - seat.midY()))));
      }
    }
    return all;
  }

  private static long slowBestMargin(List<Candidate> seats) {
    return all(seats).stream().mapToLong(Tried::margin).max().orElseThrow();
  }

  private static Tried slow(List<Candidate> seats) {
    List<Tried> all = all(seats);
    boolean clear = all.stream().anyMatch(tried -> tried.margin >= 0);
    Comparator<Tried> byMargin = Comparator.comparingLong((Tried tried) -> -tried.margin);
    Comparator<Tried> byShortfall = Comparator.comparingLong(Tried::shortfall);
    Comparator<Tried> order =
        (clear ? byShortfall.thenComparing(byMargin) : byMargin.thenComparing(byShortfall))
            .thenComparingLong(tried -> Math.max(tried.offX, tried.offY))
            .thenComparingLong(Tried::offY)
            .thenComparingLong(Tried::offX)
            .thenComparingLong(tried -> -tried.place.y())
            .thenComparingLong(tried -> -tried.place.x())
            .thenComparingInt(Tried::seat);
    return all.stream().filter(tried -> !clear || tried.margin >= 0).min(order).orElseThrow();
  }
}
