package org.jawroom.report.readings;

import java.util.List;
import java.util.Set;
import org.jawroom.geometry.Axis;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.machine.Slots;

/** The readings that locate the slots, or the vise along them. */
final class SlotReadings {
  private SlotReadings() {}

  /** Adds those along {@code axis} for a vise bolted in the slots {@code used}. */
  static void add(Machine machine, Axis axis, List<Integer> used, Set<String> readings) {
    Slots slots = machine.slots();
    if (axis == Axis.Z) {
      return;
    }
    if (axis == slots.direction()) {
      readings.add("where it stands along the slots");
    } else if (!slots.positions().isEmpty()) {
      readings.add("slot_positions");
    } else if (slots.first().isPresent()) {
      readings.add("slot_first");
      if (used.stream().anyMatch(slot -> slot > 1)) {
        readings.add("slot_pitch");
      }
    } else if (used.stream().anyMatch(slot -> 2 * slot != slots.count() + 1)) {
      readings.add("slot_pitch");
    }
  }

  /**
   * Whether the position along {@code axis} is given from the front or left edge, not from the
   * middle.
   */
  static boolean fromEdge(Slots slots, Axis axis) {
    return axis == slots.direction().across()
        && (slots.first().isPresent() || !slots.positions().isEmpty());
  }
}
