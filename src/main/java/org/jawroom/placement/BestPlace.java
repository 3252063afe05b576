package org.jawroom.placement;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.LongFunction;
import java.util.function.ToLongFunction;
import org.jawroom.geometry.Length;

/**
 * The best place among several seats, in the order of preference: margin ≥ 0; then least reach
 * shortfall; then largest margin; then nearest to mid-travel (least max(|dx|, |dy|), then |dy|,
 * then |dx|, then the greater y, then the greater x); then turn; then mount. Where no place has
 * margin ≥ 0, largest margin comes first, then least shortfall, and so on.
 *
 * <p>Every question is put to {@link FreeSpace#find} as "is there a place this good?", and its
 * limit found by halving. All bounds are whole numbers, so the answer is exact, not near.
 */
final class BestPlace {

  /** Below every margin, and far enough from overflow. */
  private static final long HOPELESS = -2 * Length.ENDLESS;

  private final List<Seat> seats;

  BestPlace(List<Seat> seats) {
    this.seats = List.copyOf(seats);
  }

  /** A seat and a place of it. */
  record Choice(Seat seat, Place place) {
    long margin() {
      return seat.space().field().margin(place.x(), place.y());
    }
  }

  /** The largest margin anywhere; {@link Length#ENDLESS} where nothing can be hit. */
  long bestMargin() {
    return bestMargin(Length.ENDLESS);
  }

  /** Whether some place has margin ≥ 0. */
  boolean isClear() {
    return seats.stream().anyMatch(seat -> seat.space().find(0, Window.EVERYWHERE).isPresent());
  }

  /** Whether some place has margin ≥ 0 with the whole work area within the spindle's reach. */
  boolean isClearInReach() {
    return seats.stream().anyMatch(seat -> seat.space().find(0, seat.reaching(0)).isPresent());
  }

  /** The recommended place; {@code bestMargin} as found before. */
  Choice recommended(long bestMargin) {
    long shortfall;
    long margin;
    if (bestMargin >= 0) {
      shortfall = leastShortfall(0);
      margin = bestMargin(shortfall);
    } else {
      margin = bestMargin;
      shortfall = leastShortfall(margin);
    }
    return nearest(margin, shortfall);
  }

  /**
   * The place with the largest margin, whatever the spindle reaches; nearest, turn and mount among
   * equals.
   */
  Choice roomiest(long bestMargin) {
    return nearest(bestMargin, Length.ENDLESS);
  }

  private long bestMargin(long shortfall) {
    long best = HOPELESS;
    for (Seat seat : seats) {
      Window window = seat.reaching(shortfall);
      Optional<Place> better = seat.space().find(best + 1, window);
      if (better.isEmpty()) {
        continue;
      }
      long lo = marginAt(seat, better.get());
      long hi = seat.space().upperBound(window);
      while (lo < hi) {
        long middle = lo + (hi - lo + 1) / 2;
        Optional<Place> found = seat.space().find(middle, window);
        if (found.isPresent()) {
          lo = marginAt(seat, found.get());
        } else {
          hi = middle - 1;
        }
      }
      best = lo;
    }
    return best;
  }

  private static long marginAt(Seat seat, Place place) {
    return seat.space().field().margin(place.x(), place.y());
  }

  private long leastShortfall(long margin) {
    long least = Length.ENDLESS;
    for (Seat seat : seats) {
      least = least(seat, margin, least, seat::reaching, seat::shortfall);
    }
    return least;
  }

  private Choice nearest(long margin, long shortfall) {
    long off = Length.ENDLESS;
    for (Seat seat : seats) {
      off =
          least(
              seat,
              margin,
              off,
              most -> seat.near(most, most).meet(seat.reaching(shortfall)),
              place -> Math.max(Math.abs(seat.offX(place)), Math.abs(seat.offY(place))));
    }
    long most = off;
    long offY = Length.ENDLESS;
    for (Seat seat : seats) {
      offY =
          least(
              seat,
              margin,
              offY,
              mostY -> seat.near(most, Math.min(most, mostY)).meet(seat.reaching(shortfall)),
              place -> Math.abs(seat.offY(place)));
    }
    long mostY = offY;
    long offX = Length.ENDLESS;
    for (Seat seat : seats) {
      offX =
          least(
              seat,
              margin,
              offX,
              mostX -> seat.near(Math.min(most, mostX), mostY).meet(seat.reaching(shortfall)),
              place -> Math.abs(seat.offX(place)));
    }
    return ofEqual(margin, shortfall, offX, offY);
  }

  /**
   * Of the places exactly so far off mid-travel, the greater y, then the greater x, then the first
   * seat.
   */
  private Choice ofEqual(long margin, long shortfall, long offX, long offY) {
    List<Choice> equal = new ArrayList<>();
    for (Seat seat : seats) {
      for (long x : new long[] {seat.midX() + offX, seat.midX() - offX}) {
        for (long y : new long[] {seat.midY() + offY, seat.midY() - offY}) {
          Place place = new Place(x, y);
          if (seat.space().holds(x, y)
              && marginAt(seat, place) >= margin
              && seat.shortfall(place) <= shortfall) {
            equal.add(new Choice(seat, place));
          }
        }
      }
    }
    // max of a stream keeps a later one of equals; the first is wanted.
    Comparator<Choice> order =
        Comparator.comparingLong((Choice choice) -> -choice.place().y())
            .thenComparingLong(choice -> -choice.place().x());
    return equal.stream().sorted(order).findFirst().orElseThrow();
  }

  /**
   * The least value below {@code bound} of a place with margin ≥ {@code margin}, else {@code
   * bound}.
   *
   * @param within the places whose value is at most so much
   */
  private static long least(
      Seat seat,
      long margin,
      long bound,
      LongFunction<Window> within,
      ToLongFunction<Place> value) {
    Optional<Place> found = seat.space().find(margin, within.apply(bound - 1));
    if (found.isEmpty()) {
      return bound;
    }
    long lo = 0;
    long hi = value.applyAsLong(found.get());
    while (lo < hi) {
      long middle = lo + (hi - lo) / 2;
      found = seat.space().find(margin, within.apply(middle));
      if (found.isPresent()) {
        hi = value.applyAsLong(found.get());
      } else {
        lo = middle + 1;
      }
    }
    return hi;
  }
}
