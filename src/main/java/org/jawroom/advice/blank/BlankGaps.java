package org.jawroom.advice.blank;

import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Length;
import org.jawroom.shop.OpenReading;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.value.Column;
import org.jawroom.shop.value.Dimension;

/** Which readings are gaps, and what they come to with trial values in place of blanks. */
public final class BlankGaps {
  private BlankGaps() {}

  /**
   * The machine with every open gap, those of guards included, at its least: the lower end of a
   * range. What has none is taken as 0, or as its upper end where that is below 0.
   */
  public static Machine atLeast(Machine machine) {
    return machine.withEachGuard(
        guard -> guard.gap().isOpen() ? guard.withGap(Dimension.of(least(guard.gap()))) : guard);
  }

  private static long least(Dimension gap) {
    Interval values = gap.values(-Length.ENDLESS);
    return Length.isBounded(values.lo()) ? values.lo() : Math.min(0, values.hi());
  }

  /** The machine with one open gap set to {@code length}. */
  public static Machine at(Machine machine, OpenReading gap, long length) {
    return machine.withEachGuard(
        guard ->
            guard.gap().isOpen() && OpenReading.of(machine, guard).equals(gap)
                ? guard.withGap(Dimension.of(length))
                : guard);
  }

  /** Whether {@code column} is a gap, which helps when larger. */
  public static boolean isGap(Column column) {
    return column == Column.GUARD_GAP
        || column.compareTo(Column.FRONT_GAP) >= 0 && column.compareTo(Column.RIGHT_GAP) <= 0;
  }
}
