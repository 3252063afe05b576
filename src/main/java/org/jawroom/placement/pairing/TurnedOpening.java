package org.jawroom.placement.pairing;

import java.util.Optional;
import java.util.function.Predicate;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Length;
import org.jawroom.shop.vise.Vise;

/**
 * The usable opening of a vise that stands turned on its swivel base: the widest range, each end a
 * whole number of {@link #STEP}s from that of the full opening, over which some position is clear.
 *
 * <p>Since what turns is judged over a range as a whole, a range is tried by judging the vise with
 * its jaws kept to it. So a range found is clear as the full opening of another vise would be,
 * whatever the others are. A range within a clear one is clear, too: each part then sweeps less,
 * and strips of a rectangle within another cover no more than those of the other (see {@link
 * org.jawroom.geometry.TurnedRectangle}). So few need trying.
 */
public final class TurnedOpening {

  /** By how much two ranges that are tried differ at least: 5 mm. */
  public static final long STEP = 5 * Length.MM;

  private TurnedOpening() {}

  /**
   * That of a model: with a settable position; if no range is wide enough so, with any. Empty if
   * the vise is not turned, or no range at least {@code least_opening} wide is clear.
   */
  static Optional<Interval> of(Model model) {
    Vise vise = model.vise().vise();
    if (!vise.isTurned()) {
      return Optional.empty();
    }
    long least = model.machine().settings().leastOpening();
    Optional<Interval> any =
        widest(vise.opening(), least, range -> model.within(range).isClear(range));
    return any.isEmpty()
        ? any
        : widest(vise.opening(), least, range -> model.within(range).isSettable(range))
            .or(() -> any);
  }

  /**
   * The widest range, of equal widths the one with the least start.
   *
   * @param least how wide it must be, touching included
   * @param isClear whether a range is clear; every range within a clear one must be, too
   */
  public static Optional<Interval> widest(Interval full, long least, Predicate<Interval> isClear) {
    Optional<Interval> widest = Optional.empty();
    // Steps left out at both ends together, of the ranges that would be wider than that found.
    long wider = Math.floorDiv(full.length() - least, STEP);
    for (long below = 0; below <= wider; below++) {
      while (below <= wider) {
        Interval range = Interval.of(full.lo() + below * STEP, full.hi() - (wider - below) * STEP);
        if (!isClear.test(range)) {
          break;
        }
        widest = Optional.of(range);
        wider--;
      }
    }
    return widest;
  }
}
