package org.jawroom.placement;

import java.util.Arrays;
import java.util.List;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Length;

/**
 * The best place among several seats, in the order of preference: margin ≥ 0; then least reach
 * shortfall; then largest margin; then nearest to mid-travel (least max(|dx|, |dy|), then |dy|,
 * then |dx|, then the greater y, then the greater x); then turn; then mount. Where no place has
 * margin ≥ 0, largest margin comes first, then least shortfall, and so on.
 *
 * <p>Every question is put to {@link FreeSpace#find} as "is there a place better than the best so
 * far?". From what it finds one goes as far as one can without searching; when it finds nothing,
 * the best so far is the best. All bounds are whole numbers, so the answer is exact, not near.
 */
final class BestPlace {

  /** Below every margin, and far enough from overflow. */
  private static final long HOPELESS = -2 * Length.ENDLESS;

  private final Seat[] seats;

  /** Of the largest margin anywhere, once that was asked for. */
  private Choice top;

  BestPlace(List<Seat> seats) {
    this(seats.toArray(Seat[]::new));
  }

  private BestPlace(Seat[] seats) {
    this.seats = seats;
  }

  /** Of a vise in regions, over a range of openings. */
  static BestPlace over(
      List<Region> regions, PreparedMachine machine, PreparedVise vise, Interval openings) {
    Seat[] seats = new Seat[regions.size()];
    for (int i = 0; i < seats.length; i++) {
      seats[i] = Seat.of(regions.get(i), machine, vise, openings);
    }
    return new BestPlace(seats);
  }

  /** The same for questions decided below 0; see {@link FreeSpace#belowZero}. */
  static BestPlace belowZero(
      List<Region> regions, PreparedMachine machine, PreparedVise vise, Interval openings) {
    Seat[] seats = new Seat[regions.size()];
    for (int i = 0; i < seats.length; i++) {
      seats[i] = Seat.belowZero(regions.get(i), machine, vise, openings);
    }
    return new BestPlace(seats);
  }

  /** What was made for questions decided below 0, made for all. */
  BestPlace aboveZero() {
    Seat[] all = new Seat[seats.length];
    for (int i = 0; i < all.length; i++) {
      all[i] = seats[i].aboveZero();
    }
    return new BestPlace(all);
  }

  /** A seat, a place of it, and the margin there. */
  record Choice(Seat seat, Place place, long margin) {}

  /** The largest margin anywhere; {@link Length#ENDLESS} where nothing can be hit. */
  long bestMargin() {
    return largest(Length.ENDLESS).margin();
  }

  /** Whether some place has margin ≥ 0. */
  boolean isClear() {
    for (Seat seat : mostPromisingFirst()) {
      if (seat.space().isClear(0, Window.EVERYWHERE)) {
        return true;
      }
    }
    return false;
  }

  /** Whether some place has margin ≥ 0 with the whole work area within the spindle's reach. */
  boolean isClearInReach() {
    return Arrays.stream(seats).anyMatch(seat -> seat.space().isClear(0, seat.reaching(0)));
  }

  /** The recommended place; {@code bestMargin} as found before. */
  Choice recommended(long bestMargin) {
    if (bestMargin < 0) {
      return nearest(bestMargin, leastShortfall(bestMargin), null);
    }
    long shortfall = leastShortfall(0);
    Choice best = largest(shortfall);
    return nearest(best.margin(), shortfall, best);
  }

  /**
   * The place with the largest margin, whatever the spindle reaches; nearest, turn and mount among
   * equals.
   */
  Choice roomiest(long bestMargin) {
    return nearest(bestMargin, Length.ENDLESS, top);
  }

  /** Some place with the largest margin of those with at most that shortfall, of which one is. */
  private Choice largest(long shortfall) {
    if (top != null && top.seat().shortfall(top.place()) <= shortfall) {
      return top;
    }
    long best = HOPELESS;
    Choice choice = null;
    for (Seat seat : mostPromisingFirst()) {
      FreeSpace space = seat.space();
      if (space.bound() <= best) {
        break;
      }
      Window window = seat.reaching(shortfall);
      Place better = best == HOPELESS ? space.likely(window) : space.find(best + 1, window);
      while (better != null) {
        Spot spot = space.climbed(better, window);
        best = spot.margin();
        choice = new Choice(seat, spot.place(), best);
        better = space.find(best + 1, window);
      }
    }
    if (shortfall == Length.ENDLESS) {
      top = choice;
    }
    return choice;
  }

  /** By the most that the walls let them hope for. */
  private Seat[] mostPromisingFirst() {
    if (seats.length == 1) {
      return seats;
    }
    Seat[] sorted = seats.clone();
    Arrays.sort(sorted, (one, other) -> Long.compare(other.space().bound(), one.space().bound()));
    return sorted;
  }

  private long leastShortfall(long margin) {
    long least = Length.ENDLESS;
    if (top != null && top.margin() >= margin) {
      least = top.seat().shortfall(top.place());
    }
    for (Seat seat : seats) {
      if (least == 0) {
        break;
      }
      Place better = seat.space().find(margin, seat.reaching(least - 1));
      while (better != null) {
        Window free = seat.space().around(better, margin, Window.EVERYWHERE);
        least = seat.leastShortfall(free);
        better = least == 0 ? null : seat.space().find(margin, seat.reaching(least - 1));
      }
    }
    return least;
  }

  /**
   * Of the places with at least that margin and at most that shortfall, the one to recommend.
   *
   * <p>Of the places around one that is known, that nearest along x is nearest along y, too; what
   * it comes to is then to be beaten.
   *
   * @param known one of them to begin with; null if none is
   */
  private Choice nearest(long margin, long shortfall, Choice known) {
    long offX = Length.ENDLESS;
    long offY = Length.ENDLESS;
    if (known != null) {
      Seat seat = known.seat();
      Window free = seat.space().around(known.place(), margin, seat.reaching(shortfall));
      offX = seat.leastOffX(free);
      offY = seat.leastOffY(free);
    }
    long off = Math.max(offX, offY);
    for (Seat seat : seats) {
      Window reaching = seat.reaching(shortfall);
      Place better = seat.space().find(margin, seat.near(off - 1, off - 1).meet(reaching));
      while (better != null) {
        Window free = seat.space().around(better, margin, reaching);
        offX = seat.leastOffX(free);
        offY = seat.leastOffY(free);
        off = Math.max(offX, offY);
        better = seat.space().find(margin, seat.near(off - 1, off - 1).meet(reaching));
      }
    }
    for (Seat seat : seats) {
      Window within = seat.near(off, off).meet(seat.reaching(shortfall));
      Place better = seat.space().find(margin, seat.near(off, offY - 1).meet(within));
      while (better != null) {
        Window free = seat.space().around(better, margin, within);
        offX = seat.leastOffX(free);
        offY = seat.leastOffY(free);
        better = seat.space().find(margin, seat.near(off, offY - 1).meet(within));
      }
    }
    for (Seat seat : seats) {
      Window within = seat.near(off, offY).meet(seat.reaching(shortfall));
      Place better = seat.space().find(margin, seat.near(offX - 1, offY).meet(within));
      while (better != null) {
        offX = seat.leastOffX(seat.space().around(better, margin, within));
        better = seat.space().find(margin, seat.near(offX - 1, offY).meet(within));
      }
    }
    return ofEqual(margin, shortfall, offX, offY);
  }

  /**
   * Of the places exactly so far off mid-travel, the greater y, then the greater x, then the first
   * seat.
   */
  private Choice ofEqual(long margin, long shortfall, long offX, long offY) {
    Choice best = null;
    for (Seat seat : seats) {
      for (long x : new long[] {seat.midX() + offX, seat.midX() - offX}) {
        for (long y : new long[] {seat.midY() + offY, seat.midY() - offY}) {
          boolean preferred =
              best == null || y > best.place().y() || y == best.place().y() && x > best.place().x();
          if (preferred && seat.space().holds(x, y)) {
            Place place = new Place(x, y);
            long there = seat.space().margin(x, y);
            if (there >= margin && seat.shortfall(place) <= shortfall) {
              best = new Choice(seat, place, there);
            }
          }
        }
      }
    }
    return best;
  }
}
