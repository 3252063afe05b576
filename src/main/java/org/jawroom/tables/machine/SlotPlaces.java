package org.jawroom.tables.machine;

import java.util.List;
import java.util.OptionalLong;
import org.jawroom.shop.value.Dimension;
import org.jawroom.tables.cell.Lengths;
import org.jawroom.tables.row.Row;

/**
 * Refuses impossible slots: off the table, or overlapping. A throat that touches the table's edge
 * or its neighbour has no metal beside it to hold a bolt, and is refused, too. For slots of blank
 * width only the centre lines are checked.
 */
final class SlotPlaces {
  private SlotPlaces() {}

  /**
   * @param column the column that determines the positions
   * @param centres the centre lines from the table's edge
   * @param across the table's size across the slots; empty if it cannot be read
   */
  static void check(
      Row row, String column, List<Long> centres, Dimension width, OptionalLong across) {
    long throat = width.isKnown() ? width.length() : 0;
    if (across.isPresent()) {
      refuseOffTheTable(row, column, centres, throat, across.getAsLong());
    }
    refuseOverlap(row, column, centres, throat);
  }

  private static void refuseOffTheTable(
      Row row, String column, List<Long> centres, long throat, long across) {
    for (int i = 0; i < centres.size(); i++) {
      long from = centres.get(i) - throat / 2;
      long to = centres.get(i) + throat / 2;
      if (from <= 0 || to >= across) {
        row.fault(
            column,
            "puts slot "
                + (i + 1)
                + " off the table: "
                + (throat > 0
                    ? "its throat goes from "
                        + Lengths.inMillimetres(from)
                        + " to "
                        + Lengths.inMillimetres(to)
                    : "its centre line is at " + Lengths.inMillimetres(from))
                + ", the top from 0 mm to "
                + Lengths.inMillimetres(across)
                + (column.equals("slot_pitch")
                    ? "; check slot_pitch and slot_count, or give slot_first"
                    : "; measure from the table's edge to centre lines"));
        return;
      }
    }
  }

  private static void refuseOverlap(Row row, String column, List<Long> centres, long throat) {
    for (int i = 1; i < centres.size(); i++) {
      long apart = centres.get(i) - centres.get(i - 1);
      if (apart > 0 && apart <= throat) {
        row.fault(
            column.equals("slot_first") ? "slot_pitch" : column,
            "puts slots "
                + i
                + " and "
                + (i + 1)
                + " into each other: "
                + Lengths.inMillimetres(apart)
                + " from centre line to centre line, each "
                + Lengths.inMillimetres(throat)
                + " wide");
        return;
      }
    }
  }
}
