package org.jawroom.placement.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalLong;
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
 * Finds the best placement among several candidates by lexicographic preference: margin ≥ 0; then
 * bolted before clamped; then settable before not; then least reach shortfall; then largest margin;
 * then nearest to mid-travel (least max(|dx|, |dy|), then |dy|, then |dx|, then the greater y, then
 * the greater x); then turn; then mount. If no placement has margin ≥ 0, largest margin comes
 * first, then least shortfall, nearest, turn and mount.
 *
 * <p>Every step asks {@link FreeSpace#find} for a placement better than the incumbent, improves
 * what it finds by a local climb, and stops when none is found: the incumbent is then optimal. All
 * bounds are whole numbers, so the result is exact.
 */
public final class BestPlace {

  /** Below every margin, with room against overflow. */
  private static final long HOPELESS = -2 * Length.ENDLESS;

  private final List<Candidate> seats;

  /** The largest margin anywhere; computed on first use. */
  private Largest top;

  public BestPlace(List<Candidate> seats) {
    this.seats = seats;
  }

  /** The candidates of a vise's regions over an opening range. */
  public static BestPlace over(
      List<Region> regions, PreparedMachine machine, PreparedVise vise, Interval openings) {
    List<Candidate> seats = new ArrayList<>(regions.size());
    for (Region region : regions) {
      seats.add(Candidate.of(region, machine, vise, openings));
    }
    return new BestPlace(seats);
  }

  /** The same, valid for decisions at or below 0 only; see {@link FreeSpace#belowZero}. */
  public static BestPlace belowZero(
      List<Region> regions, PreparedMachine machine, PreparedVise vise, Interval openings) {
    List<Candidate> seats = new ArrayList<>(regions.size());
    for (Region region : regions) {
      seats.add(Candidate.belowZero(region, machine, vise, openings));
    }
    return new BestPlace(seats);
  }

  /** The same candidates without the restriction of {@link #belowZero}. */
  public BestPlace aboveZero() {
    List<Candidate> all = new ArrayList<>(seats.size());
    for (Candidate seat : seats) {
      all.add(seat.aboveZero());
    }
    return new BestPlace(all);
  }

  /** A candidate, one of its positions, and the margin there. */
  public record Choice(Candidate seat, Place place, long margin) {}

  /**
   * A position with the largest margin among those within some shortfall; there is at least one.
   *
   * @param seats the candidates that have such a position, in order
   */
  private record Largest(Choice choice, List<Candidate> seats) {}

  /** The largest margin anywhere; {@link Length#ENDLESS} if nothing can be hit. */
  public long bestMargin() {
    return top().choice().margin();
  }

  /** Whether some position has margin ≥ 0. */
  public boolean isClear() {
    for (int index : mostPromisingFirst()) {
      if (seats.get(index).hasMargin(0)) {
        return true;
      }
    }
    return false;
  }

  /** The recommended placement. */
  public Choice recommended() {
    long margin = bestMargin();
    if (margin < 0) {
      Incumbent known = new Incumbent(top.choice().seat(), top.choice().place());
      long shortfall = leastShortfall(margin, known, top.seats());
      return nearest(margin, shortfall, top.choice(), top.seats());
    }
    return recommended(0);
  }

  /** The recommended placement among those with a margin; some position must have it. */
  public Choice recommended(long least) {
    BestPlace preferred = new BestPlace(preferred(least, Length.ENDLESS));
    return preferred.roomiest(leastShortfall(least, null, preferred.seats));
  }

  /**
   * The recommended placement among those with margin ≥ 0 and the least reach shortfall.
   *
   * @param shortfall that of {@link #leastShortfall}, which is not empty
   */
  public Choice recommendedOf(long shortfall) {
    return new BestPlace(preferred(0, shortfall)).roomiest(shortfall);
  }

  /** The least reach shortfall with margin ≥ 0; empty if no position has that margin. */
  public OptionalLong leastShortfall() {
    Incumbent best = least(Preference.SHORTFALL, 0, Bounds.NONE, null, seats);
    return best == null ? OptionalLong.empty() : OptionalLong.of(best.seat.shortfall(best.place));
  }

  /**
   * Those with a position of that margin and at most that shortfall: bolted before clamped, then
   * settable before not.
   */
  private List<Candidate> preferred(long least, long shortfall) {
    List<Candidate> held = held(false, least, shortfall);
    if (held.isEmpty()) {
      held = held(true, least, shortfall);
    }
    List<Candidate> settable = new ArrayList<>(held.size());
    for (Candidate seat : held) {
      Candidate tapped = seat.settable().orElse(null);
      if (tapped != null && tapped.hasMargin(least, shortfall)) {
        settable.add(tapped);
      }
    }
    return settable.isEmpty() ? held : settable;
  }

  /** Those that are clamped, or those that are not, with a position of that margin. */
  private List<Candidate> held(boolean clamped, long least, long shortfall) {
    List<Candidate> held = new ArrayList<>(seats.size());
    for (Candidate seat : seats) {
      if (seat.region().fastening().clamped() == clamped && seat.hasMargin(least, shortfall)) {
        held.add(seat);
      }
    }
    return held;
  }

  /** The placement with the largest margin among those with at most that shortfall. */
  private Choice roomiest(long shortfall) {
    Largest best = largest(shortfall);
    return nearest(best.choice().margin(), shortfall, best.choice(), best.seats());
  }

  /**
   * The placement with the largest margin regardless of the spindle's reach; ties go to the
   * nearest, then by turn and mount.
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
   * Discards candidates that cannot match the incumbent, since they are irrelevant to all later
   * steps as well. Hence it first searches for an equally good position, and only then for a better
   * one.
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
      Place asGood = choice == null ? space.first(window) : space.find(best, window);
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

  /** Candidate indices by descending upper bound on the margin, as given by the walls. */
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
   * The preferred position among those with at least that margin and at most that shortfall.
   *
   * @param known a position with that margin to start from, whatever its shortfall
   * @param among the candidates that have such a position
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

  /** The best position found so far. */
  private record Incumbent(Candidate seat, Place place) {}

  /**
   * A position that minimizes one preference among those with at least that margin within the
   * bounds; there is at least one. Searches for positions that beat the incumbent until there are
   * none.
   *
   * @param known a position with that margin to start from, within the bounds or not; or null
   */
  private static Incumbent least(
      Preference preference, long margin, Bounds bounds, Incumbent known, List<Candidate> among) {
    Incumbent best = null;
    long least = Length.ENDLESS;
    if (known != null && bounds.hold(known.seat, known.place)) {
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
   * Among the positions exactly that far off mid-travel: the greatest y, then the greatest x, then
   * the first candidate.
   */
  private static Choice ofEqual(
      long margin, long shortfall, long offX, long offY, List<Candidate> among) {
    Choice best = null;
    for (Candidate seat : among) {
      // The four corners in descending order of preference.
      for (int corner = 0; corner < 4; corner++) {
        long x = seat.midX() + (corner % 2 == 0 ? offX : -offX);
        long y = seat.midY() + (corner < 2 ? offY : -offY);
        boolean preferred =
            best == null || y > best.place().y() || y == best.place().y() && x > best.place().x();
        if (preferred
            && seat.shortfall(x, y) <= shortfall
            && seat.space().isClear(margin, new Window(x, x, y, y))) {
          best = new Choice(seat, new Place(x, y), seat.space().margin(x, y));
          break;
        }
      }
    }
    return best;
  }

  /**
   * The least shortfall in {@code among} with at least that margin; some position has it.
   *
   * @param known one of them to start from, or null
   */
  private static long leastShortfall(long margin, Incumbent known, List<Candidate> among) {
    Incumbent best = least(Preference.SHORTFALL, margin, Bounds.NONE, known, among);
    return best.seat.shortfall(best.place);
  }

  private static long shortfallOf(Choice choice) {
    return choice.seat().shortfall(choice.place());
  }
}
