package org.jawroom.clearance;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.jawroom.geometry.Box;
import org.jawroom.geometry.Interval;
import org.jawroom.shop.Axes;
import org.jawroom.shop.Column;
import org.jawroom.shop.Dimension;
import org.jawroom.shop.Guard;
import org.jawroom.shop.Machine;
import org.jawroom.shop.Side;
import org.jawroom.shop.When;

/** The four gaps of a machine's row as guards: carried by the frame, filling everything beyond. */
public final class GapGuards {
  private static final Box EVERYWHERE = new Box(Interval.ALL, Interval.ALL, Interval.ALL);

  private GapGuards() {}

  /** Those of a known gap, in the order of sides; blank ones are noted. */
  static List<Guard> of(Machine machine, Blanks blanks) {
    List<Guard> guards = new ArrayList<>();
    for (Side side : Side.values()) {
      Dimension gap = machine.gaps().get(side);
      if (!gap.isNone() && blanks.given(gap, column(side))) {
        guards.add(
            new Guard(
                name(side),
                "",
                Axes.NONE,
                when(side),
                Optional.of(side),
                gap,
                EVERYWHERE,
                OptionalLong.empty(),
                OptionalLong.empty()));
      }
    }
    return guards;
  }

  /** The name of the guard that a gap stands for. */
  public static String name(Side side) {
    return switch (side) {
      case FRONT -> "door";
      case REAR -> "rear cover";
      case LEFT -> "left guard";
      case RIGHT -> "right guard";
    };
  }

  /** The door is open while loading; what stands on the other sides stands there always. */
  private static When when(Side side) {
    return side == Side.FRONT ? When.CUTTING : When.ALWAYS;
  }

  /** The column in which a gap is told. */
  public static Column column(Side side) {
    return switch (side) {
      case FRONT -> Column.FRONT_GAP;
      case REAR -> Column.REAR_GAP;
      case LEFT -> Column.LEFT_GAP;
      case RIGHT -> Column.RIGHT_GAP;
    };
  }
}
