package org.jawroom.plausibility;

import java.util.ArrayList;
import java.util.List;
import org.jawroom.shop.GuardKinds;
import org.jawroom.shop.Machine;
import org.jawroom.shop.Side;

/** What looks wrong in a row of {@code machines} by itself. */
final class MachineWarnings {

  private MachineWarnings() {}

  static List<Warning> of(Machine machine) {
    List<Warning> warnings = new ArrayList<>();
    if (machine.gap(Side.REAR).isNone() && machine.tableMoves().y()) {
      warnings.add(
          Warning.machine(
              machine.name(),
              "rear_gap",
              "none, though the table moves in y: is there really no column or cover behind it? Tape"
                  + " the gap with the table all the way back"));
    }
    if (machine.provenance().assumedExact()) {
      warnings.add(Warning.machine(machine.name(), "tolerance", TAKEN_AS_0));
    }
    List<String> unlooked = GuardKinds.notLookedFor(machine);
    if (!unlooked.isEmpty()) {
      warnings.add(
          Warning.machine(
              machine.name(),
              "looked_for",
              "does not name "
                  + String.join(", ", unlooked)
                  + ". Look for each, give what could be hit a row in guards, then name it here"));
    }
    return warnings;
  }

  static final String TAKEN_AS_0 =
      "and source are blank, so every number counts as exact. Give what it was measured with, or how"
          + " far it may be off";
}
