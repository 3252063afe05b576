package org.jawroom.advice.blank;

import org.jawroom.shop.machine.Guard;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.value.Column;
import org.jawroom.shop.value.Dimension;

/** Which readings are gaps, and what they come to with trial values in place of blanks. */
public final class BlankGaps {
  private BlankGaps() {}

  /** The machine with every blank gap, those of guards included, set to {@code length}. */
  public static Machine blanksAt(Machine machine, long length) {
    return machine.withEachGuard(
        guard -> guard.gap().isBlank() ? guard.withGap(Dimension.of(length)) : guard);
  }

  /** Whether {@code column} is a gap, which helps when larger. */
  public static boolean isGap(Column column) {
    return column == Column.GUARD_GAP
        || column.compareTo(Column.FRONT_GAP) >= 0 && column.compareTo(Column.RIGHT_GAP) <= 0;
  }

  /**
   * The machine with one blank gap set to {@code length}; {@code guard} names the guard for {@link
   * Column#GUARD_GAP}.
   */
  public static Machine at(Machine machine, Column column, String guard, long length) {
    return machine.withEachGuard(
        one -> isMeant(one, column, guard) ? one.withGap(Dimension.of(length)) : one);
  }

  private static boolean isMeant(Guard one, Column column, String guard) {
    return one.reading() == column
        && one.gap().isBlank()
        && (!one.isRow() || one.name().equals(guard));
  }
}
