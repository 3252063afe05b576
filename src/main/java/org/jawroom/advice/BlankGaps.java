package org.jawroom.advice;

import org.jawroom.clearance.GapGuards;
import org.jawroom.shop.Column;
import org.jawroom.shop.Dimension;
import org.jawroom.shop.Guard;
import org.jawroom.shop.Machine;
import org.jawroom.shop.Side;

/** Fills in gaps that are blank. */
final class BlankGaps {
  private BlankGaps() {}

  /** Every blank gap, those of guards too, as {@code length}. */
  static Machine blanksAt(Machine machine, long length) {
    Machine told = machine;
    for (Side side : Side.values()) {
      if (machine.gaps().get(side).isBlank()) {
        told = told.withGaps(told.gaps().with(side, Dimension.of(length)));
      }
    }
    return told.withGuards(
        told.guards().stream()
            .map(guard -> guard.gap().isBlank() ? guard.withGap(Dimension.of(length)) : guard)
            .toList());
  }

  /** Whether {@code column} is that of a gap. */
  static boolean isGap(Column column) {
    return column == Column.GUARD_GAP
        || column.compareTo(Column.FRONT_GAP) >= 0 && column.compareTo(Column.RIGHT_GAP) <= 0;
  }

  /**
   * One blank gap as {@code length}; {@code guard} names the guard for {@link Column#GUARD_GAP}.
   */
  static Machine at(Machine machine, Column column, String guard, long length) {
    Machine told = machine;
    for (Side side : Side.values()) {
      if (column == GapGuards.column(side)) {
        told = told.withGaps(told.gaps().with(side, Dimension.of(length)));
      }
    }
    return told.withGuards(
        told.guards().stream()
            .map(one -> isMeant(one, column, guard) ? one.withGap(Dimension.of(length)) : one)
            .toList());
  }

  private static boolean isMeant(Guard one, Column column, String guard) {
    return column == Column.GUARD_GAP && one.name().equals(guard) && one.gap().isBlank();
  }
}
