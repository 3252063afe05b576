package org.jawroom.tables.machine;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.stream.IntStream;
import org.jawroom.geometry.Axis;
import org.jawroom.shop.machine.Slots;
import org.jawroom.shop.value.Dimension;
import org.jawroom.tables.row.Ledger;
import org.jawroom.tables.row.Row;

/** Parses the T-slots of a machine's row. */
final class SlotCells {
  private SlotCells() {}

  /** Far more than fit on any table. */
  private static final int MOST = 1000;

  private static final List<String> INSTEAD = List.of("slot_count", "slot_pitch", "slot_first");

  /**
   * Empty if the row is unsound.
   *
   * @param tableLength along x; empty if it cannot be read
   * @param tableWidth along y; empty if it cannot be read
   */
  static Optional<Slots> read(
      Row row, OptionalLong tableLength, OptionalLong tableWidth, String thing, Ledger ledger) {
    boolean alongY = row.says("slot_direction", "y");
    Dimension width = row.dimension("slot_width");
    OptionalLong length = row.length("slot_length");
    List<Long> positions = row.lengths("slot_positions");
    boolean placed = !row.isBlank("slot_positions");
    if (placed) {
      refuseBoth(row);
      refuseUnordered(row, positions);
    }
    OptionalInt count = placed ? OptionalInt.of(positions.size()) : row.count("slot_count");
    if (count.orElse(0) > MOST) {
      row.fault(placed ? "slot_positions" : "slot_count", "is more slots than any table has");
    }
    Dimension pitch = placed ? Dimension.BLANK : row.dimension("slot_pitch");
    OptionalLong first = placed ? OptionalLong.empty() : row.length("slot_first");
    OptionalLong across = alongY ? tableLength : tableWidth;
    if (placed) {
      SlotPlaces.check(row, "slot_positions", positions, width, across);
    } else if (count.isPresent() && count.getAsInt() <= MOST) {
      checkEven(row, count.getAsInt(), pitch, first, width, across);
    }
    if (!row.isSound()) {
      return Optional.empty();
    }
    if (!placed && first.isEmpty() && count.getAsInt() > 0) {
      ledger.tookDefault(
          row, thing + ": slot_first blank, so its slots taken as centred on the table");
    }
    return Optional.of(
        new Slots(
            alongY ? Axis.Y : Axis.X, count.getAsInt(), width, pitch, first, positions, length));
  }

  /** Checks slots given by count, pitch and first, or centred. */
  private static void checkEven(
      Row row,
      int count,
      Dimension pitch,
      OptionalLong first,
      Dimension width,
      OptionalLong across) {
    if (count == 0 || (first.isEmpty() && across.isEmpty()) || (count > 1 && !pitch.isKnown())) {
      return;
    }
    long step = count > 1 ? pitch.length() : 0;
    long start = first.orElseGet(() -> (across.getAsLong() - (count - 1) * step) / 2);
    List<Long> centres = IntStream.range(0, count).mapToObj(slot -> start + slot * step).toList();
    String column = row.isBlank("slot_first") && count > 1 ? "slot_pitch" : "slot_first";
    SlotPlaces.check(row, column, centres, width, across);
  }

  private static void refuseBoth(Row row) {
    for (String column : INSTEAD) {
      if (!row.isBlank(column)) {
        row.fault(column, "must stay blank where slot_positions is filled");
      }
    }
  }

  private static void refuseUnordered(Row row, List<Long> positions) {
    for (int i = 1; i < positions.size(); i++) {
      if (positions.get(i) <= positions.get(i - 1)) {
        row.fault("slot_positions", "does not rise from each slot to the next");
      }
    }
  }
}
