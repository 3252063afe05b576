package org.jawroom.placement.bolting;

import java.util.Optional;
import java.util.OptionalLong;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Orientation;
import org.jawroom.geometry.Rectangle;
import org.jawroom.placement.space.Place;
import org.jawroom.shop.Machine;
import org.jawroom.shop.Settings;
import org.jawroom.shop.Vise;

/** Overhang of a simple vise's base over the edges of the table top, ledges not counted. */
public final class Overhang {
  private static final Rectangle EVERYWHERE = new Rectangle(Interval.ALL, Interval.ALL);

  private Overhang() {}

  /** The largest overhang over any edge, 0 if none; empty without a {@code base}. */
  public static OptionalLong at(Machine machine, Optional<Rectangle> base, Place place) {
    return base.map(held -> OptionalLong.of(top(machine, 0).shortfall(held, place.x(), place.y())))
        .orElse(OptionalLong.empty());
  }

  /**
   * The positions at which the base overhangs no edge by more than the setting allows; empty if
   * there are none.
   */
  public static Optional<Rectangle> allowed(
      Settings settings, Machine machine, Vise vise, Orientation turn) {
    Optional<Rectangle> base = Footprint.base(vise, turn);
    if (settings.maxOverhang().isEmpty() || base.isEmpty()) {
      return Optional.of(EVERYWHERE);
    }
    return within(machine, settings.maxOverhang().getAsLong(), base.get());
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
    return new Rectangle(
        Interval.around(0, machine.tableLength() / 2 + over),
        Interval.around(0, machine.tableWidth() / 2 + over));
  }
}
