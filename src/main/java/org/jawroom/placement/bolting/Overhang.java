package org.jawroom.placement.bolting;

import java.util.Optional;
import java.util.OptionalLong;
import org.jawroom.clearance.Certainty;
import org.jawroom.clearance.part.ClampParts;
import org.jawroom.geometry.Ends;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Orientation;
import org.jawroom.geometry.Rectangle;
import org.jawroom.placement.space.Place;
import org.jawroom.placement.space.Strips;
import org.jawroom.shop.Settings;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.vise.Vise;

/** Overhang of a simple vise's base over the edges of the table top, ledges not counted. */
public final class Overhang {
  private Overhang() {}

  /**
   * The largest overhang over any edge, 0 if none; empty without a {@code base}, or where a reading
   * without end leaves it without end.
   */
  public static OptionalLong at(Machine machine, Optional<Rectangle> base, Place place) {
    return base.map(held -> machine.top().shortfall(held, place.x(), place.y()))
        .filter(Certainty::hasEnd)
        .map(OptionalLong::of)
        .orElse(OptionalLong.empty());
  }

  /**
   * The positions at which the base overhangs no edge by more than the setting allows; empty if
   * there are none.
   */
  public static Optional<Rectangle> allowed(
      Settings settings, Machine machine, Vise vise, Orientation turn) {
    return allowed(settings, machine, vise, turn, Certainty.AT_WORST);
  }

  /** The same, for the base as far as all values of its readings take it, or any. */
  static Optional<Rectangle> allowed(
      Settings settings, Machine machine, Vise vise, Orientation turn, Certainty certainty) {
    Optional<Rectangle> base = Footprint.base(vise, turn, certainty);
    if (settings.maxOverhang().isEmpty() || base.isEmpty()) {
      return Optional.of(Region.EVERYWHERE);
    }
    return within(machine, settings.maxOverhang().getAsLong(), base.get());
  }

  /** The positions at which base and strap clamps lie wholly over the table top; empty if none. */
  static Optional<Rectangle> clamped(
      Machine machine, Vise vise, Settings settings, Orientation turn, Certainty certainty) {
    Ends u = ClampParts.alongU(vise, certainty);
    Ends v = ClampParts.alongV(vise, settings.clampRoom(), certainty);
    if (u.isReversed()) {
      return Optional.of(Region.EVERYWHERE);
    }
    Interval alongU = Interval.of(u.lo(), u.hi());
    Interval alongV = Interval.around(0, v.hi());
    return within(machine, 0, new Rectangle(turn.x(alongU, alongV), turn.y(alongU, alongV)));
  }

  /**
   * The positions at which {@code base} overhangs no edge by more than {@code over}; empty if none.
   */
  static Optional<Rectangle> within(Machine machine, long over, Rectangle base) {
    Rectangle top = top(machine, over);
    if (base.x().length() > top.x().length() || base.y().length() > top.y().length()) {
      return Optional.empty();
    }
    return Optional.of(
        new Rectangle(
            Interval.of(top.x().lo() - base.x().lo(), top.x().hi() - base.x().hi()),
            Interval.of(top.y().lo() - base.y().lo(), top.y().hi() - base.y().hi())));
  }

  private static Rectangle top(Machine machine, long over) {
    Rectangle top = machine.top();
    return new Rectangle(top.x().grown(over, over), top.y().grown(over, over));
  }

  /**
   * The least by which the base hangs over a table edge at the end of its length, over all of
   * {@code places}; 0 if at one of them it hangs over neither. How far it hangs over the edges
   * beside it does not count.
   *
   * @param alongU the base along u, see {@link Footprint#baseAlongU}
   */
  public static long leastEndwise(
      Machine machine, Interval alongU, Orientation turn, Strips places) {
    Interval base = turn.uSign() > 0 ? alongU : alongU.negated();
    Interval top = machine.top().along(turn.uAxis());
    // It rises with the distance from where the base stands centred, so that of each interval the
    // nearest place has the least.
    long centred = -(base.lo() + base.hi()) / 2;
    long[] ends = places.along(turn.uAxis()).ends();
    long least = Long.MAX_VALUE;
    for (int i = 0; i < ends.length; i += 2) {
      long place = Math.max(ends[i], Math.min(ends[i + 1], centred));
      long over = Math.max(top.lo() - base.lo() - place, base.hi() + place - top.hi());
      least = Math.min(least, Math.max(0, over));
    }
    return least;
  }
}
