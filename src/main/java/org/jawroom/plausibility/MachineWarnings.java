package org.jawroom.plausibility;

import java.util.ArrayList;
import java.util.List;
import org.jawroom.plausibility.warning.Seriousness;
import org.jawroom.plausibility.warning.Warning;
import org.jawroom.shop.machine.GuardKinds;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.machine.Side;

/** Warnings about a row of {@code machines} by itself. */
final class MachineWarnings {

  private MachineWarnings() {}

  static List<Warning> of(Machine machine) {
    List<Warning> warnings = new ArrayList<>();
    List<String> unlooked = GuardKinds.notLookedFor(machine);
    boolean looked = !unlooked.contains("column") && !unlooked.contains("cover");
    if (machine.gap(Side.REAR).isNone() && machine.tableMoves().y() && !looked) {
      warnings.add(
          Warning.machine(
              Seriousness.UNSEEN,
              machine.name(),
              "rear_gap",
              "none, though the table moves in y: is there really no column or cover behind it?"
                  + " Tape the gap with the table all the way back"));
    }
    if (machine.provenance().assumedExact()) {
      warnings.add(Warning.machine(Seriousness.UNSEEN, machine.name(), TOLERANCE, TAKEN_AS_0));
    }
    if (!unlooked.isEmpty()) {
      warnings.add(
          Warning.machine(
              Seriousness.UNSEEN,
              machine.name(),
              LOOKED_FOR,
              "does not name "
                  + String.join(", ", unlooked)
                  + ". Look for each, give what could be hit a row in guards, then name it here"));
    }
    return warnings;
  }

  static final String TOLERANCE = "tolerance";
  static final String LOOKED_FOR = "looked_for";
  static final String TAKEN_AS_0 =
      "and source are blank, so every number counts as exact. Give what it was measured with, or"
          + " how far it may be off";
}
