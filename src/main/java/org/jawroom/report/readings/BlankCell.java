package org.jawroom.report.readings;

import java.util.ArrayList;
import java.util.List;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.shop.machine.Guard;
import org.jawroom.shop.value.Column;

/**
 * An unmeasured value: a column of one machine or vise, or the gap of one guard.
 *
 * @param row index of the machine or vise
 * @param guard the guard's name for {@link Column#GUARD_GAP}; else empty
 */
public record BlankCell(Column column, int row, String guard) {

  /** The blanks that make a pairing unknown, in the order of the tables. */
  static List<BlankCell> of(Outcome outcome, int machine, int vise) {
    List<BlankCell> cells = new ArrayList<>();
    for (Column column : outcome.missing()) {
      if (column == Column.GUARD_GAP) {
        outcome.machine().guardRows().stream()
            .filter(guard -> guard.gap().isBlank())
            .map(Guard::name)
            .forEach(guard -> cells.add(new BlankCell(column, machine, guard)));
      } else {
        cells.add(new BlankCell(column, isOfMachine(column) ? machine : vise, ""));
      }
    }
    return cells;
  }

  boolean isOfMachine() {
    return isOfMachine(column);
  }

  /** The position of its table in the order of the tables. */
  int table() {
    int first = column.ordinal();
    while (first > 0 && Column.values()[first - 1].table().equals(column.table())) {
      first--;
    }
    return first;
  }

  private static boolean isOfMachine(Column column) {
    // The constants of {@link Column} are in the order of the tables: machines, guards, then those
    // of the vise.
    return column.compareTo(Column.GUARD_GAP) <= 0;
  }
}
