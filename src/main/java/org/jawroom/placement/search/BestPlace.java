package org.jawroom.placement.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Length;
import org.jawroom.placement.bolting.PreparedMachine;
import org.jawroom.placement.bolting.PreparedVise;
import org.jawroom.placement.bolting.Region;
import org.jawroom.placement.space.FreeSpace;
import org.jawroom.placement.space.Place;
import org.jawroom.placement.space.Spot;
import org.jawroom.placement.space.Window;

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
public final class BestPlace {

  /** Below every margin, and far enough from overflow. */
  private static final long HOPELESS = -2 * Length.ENDLESS;

  private final List<Candidate> seats;

  /** The largest margin anywhere, once that was asked for. */
  private Largest top;

  public BestPlace(List<Candidate> seats) {
    this.seats = seats;
  }

  /** Of a vise in regions, over a range of openings. */
  public static BestPlace over(
      List<Region> regions, PreparedMachine machine, PreparedVise vise, Interval openings) {
    List<Candidate> seats = new ArrayList<>(regions.size());
    for (Region region : regions) {
      seats.add(Candidate.of(region, machine, vise, openings));
    }
    return new BestPlace(seats);
  }

  /** The same for questions decided below 0; see {@link FreeSpace#belowZero}. */
  public static BestPlace belowZero(
      List<Region> regions, PreparedMachine machine, PreparedVise vise, Interval openings) {
    List<Candidate> seats = new ArrayList<>(regions.size());
    for (Region region : regions) {
      seats.add(Candidate.belowZero(region, machine, vise, openings));
    }
    return new BestPlace(seats);
  }

  /** What was made for questions decided below 0, made for all. */
  public BestPlace aboveZero() {
    List<Candidate> all = new ArrayList<>(seats.size());
    for (Candidate seat : seats) {
      all.add(seat.aboveZero());
    }
    return new BestPlace(all);
  }

  /** A seat, a place of it, and the margin there. */
  public record Choice(Candidate seat, Place place, long margin) {}

  /**
   * A place with the largest margin of those with at most some shortfall, of which there is one.
   *
   * @param seats that have such a place, in their order
   */
  private record Largest(Choice choice, List<Candidate> seats) {}

  /** The largest margin anywhere; {@link Length#ENDLESS} where nothing can be hit. */
  public long bestMargin() {
    return top().choice().margin();
  }

  /** Whether some place has margin ≥ 0. */
  public boolean isClear() {
    for (int index : mostPromisingFirst()) {
      if (seats.get(index).space().isClear(0, Window.EVERYWHERE)) {
        return true;
      }
    }
    return false;
  }

  /** Whether some place has margin ≥ 0 with the whole work area within the spindle's reach. */
  public boolean isClearInReach() {
    return seats.stream().anyMatch(seat -> seat.space().isClear(0, seat.reaching(0)));
  }

  /** The recommended place. */
  public Choice recommended() {
    long margin = bestMargin();
    if (margin < 0) {
      long shortfall = leastShortfall(margin, top.seats());
      return nearest(margin, shortfall, top.choice(), top.seats());
    }
    long shortfall = leastShortfall(0, seats);
    Largest best = largest(shortfall);
    return nearest(best.choice().margin(), shortfall, best.choice(), best.seats());
  }

  /**
   * The place with the largest margin, whatever the spindle reaches; nearest, turn and mount among
   * equals.
   */
  Choice roomiest() {
    return nearest(bestMargin(), Length.ENDLESS, top.choice(), top.seats());
  }

  private Largest top() {
    if (top == null) {
      top = largest(Length.ENDLESS);
    }
    return top;
  }

  /**
   * Whoever has no place as good as the best so far is out of it for all that follows; so that is
   * asked first, and whether there is a better one only then.
   */
  private Largest largest(long shortfall) {
    if (top != null && shortfallOf(top.choice()) <= shortfall) {
      return top;
    }
    long best = HOPELESS;
    Choice choice = null;
    boolean[] isAsGood = new boolean[seats.size()];
    for (int index : mostPromisingFirst()) {
      Candidate seat = seats.get(index);
      FreeSpace space = seat.space();
      if (space.bound() < best) {
        break;
      }
      Window window = seat.reaching(shortfall);
      Place asGood = choice == null ? space.likely(window) : space.find(best, window);
      if (asGood == null) {
        continue;
      }
      while (asGood != null) {
        Spot spot = space.climbed(asGood, window);
        if (spot.margin() > best) {
          best = spot.margin();
          choice = new Choice(seat, spot.place(), best);
          Arrays.fill(isAsGood, false);
        }
        asGood = space.find(best + 1, window);
      }
      isAsGood[index] = true;
    }
    List<Candidate> equal = new ArrayList<>(1);
    for (int i = 0; i < isAsGood.length; i++) {
      if (isAsGood[i]) {
        equal.add(seats.get(i));
      }
    }
    return new Largest(choice, equal);
  }

  /** Which of the seats, by the most that the walls let them hope for. */
  private int[] mostPromisingFirst() {
    int[] order = new int[seats.size()];
    for (int i = 0; i < order.length; i++) {
      long hope = seats.get(i).space().bound();
      int at = i;
      while (at > 0 && seats.get(order[at - 1]).space().bound() < hope) {
        order[at] = order[at - 1];
        at--;
      }
      order[at] = i;
    }
    return order;
  }

  /**
   * Of the places with at least that margin and at most that shortfall, the one to recommend.
   *
   * @param known one with that margin to begin with, whatever its shortfall
   * @param among the seats that have such a place
   */
  private static Choice nearest(long margin, long shortfall, Choice known, List<Candidate> among) {
    Bounds bounds = new Bounds(shortfall, Length.ENDLESS, Length.ENDLESS);
    Incumbent best = new Incumbent(known.seat(), known.place());
    for (Preference preference : Preference.NEARNESS) {
      best = least(preference, margin, bounds, best, among);
      bounds = preference.bounded(bounds, preference.of(best.seat, best.place));
    }
    return ofEqual(margin, shortfall, bounds.offX(), bounds.offY(), among);
  }

  /** A place that is the best found so far. */
  private record Incumbent(Candidate seat, Place place) {}

  /**
   * A place that is best by one preference, of those with at least that margin within bounds, of
   * which there is one. Asks for a place that beats the incumbent until there is none.
   *
   * @param known a place with that margin to begin with, within the bounds or not
   */
  private static Incumbent least(
      Preference preference, long margin, Bounds bounds, Incumbent known, List<Candidate> among) {
    Incumbent best = null;
    long least = Length.ENDLESS;
    if (bounds.hold(known.seat, known.place)) {
      best = new Incumbent(known.seat, bounds.nearest(known.seat, known.place, margin));
      least = preference.of(best.seat, best.place);
    }
    for (Candidate seat : among) {
      while (least > 0) {
        Window better = preference.bounded(bounds, least - 1).window(seat);
        Place found = seat.space().find(margin, better);
        if (found == null) {
          break;
        }
        best = new Incumbent(seat, bounds.nearest(seat, found, margin));
        least = preference.of(seat, best.place);
      }
    }
    return best;
  }

  /**
   * Of the places exactly so far off mid-travel, the greater y, then the greater x, then the first
   * seat.
   */
  private static Choice ofEqual(
      long margin, long shortfall, long offX, long offY, List<Candidate> among) {
    Choice best = null;
    for (Candidate seat : among) {
      // From the most preferred of its four corners to the least.
      for (int corner = 0; corner < 4; corner++) {
        long x = seat.midX() + (corner % 2 == 0 ? offX : -offX);
        long y = seat.midY() + (corner < 2 ? offY : -offY);
        boolean preferred =
            best == null || y > best.place().y() || y == best.place().y() && x > best.place().x();
        if (preferred && seat.space().holds(x, y) && seat.shortfall(x, y) <= shortfall) {
          long there = seat.space().margin(x, y);
          if (there >= margin) {
            best = new Choice(seat, new Place(x, y), there);
            break;
          }
        }
      }
    }
    return best;
  }

  /** Of the places in {@code among} with at least that margin, of which the top is one. */
  private long leastShortfall(long margin, List<Candidate> among) {
    Incumbent known = new Incumbent(top.choice().seat(), top.choice().place());
    Incumbent best = least(Preference.SHORTFALL, margin, Bounds.NONE, known, among);
    return best.seat.shortfall(best.place);
  }

  private static long shortfallOf(Choice choice) {
    return choice.seat().shortfall(choice.place());
  }
}
