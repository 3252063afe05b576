package org.jawroom.plausibility;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jawroom.clearance.GuardStance;
import org.jawroom.geometry.Length;
import org.jawroom.geometry.Rectangle;
import org.jawroom.shop.Axes;
import org.jawroom.shop.Guard;
import org.jawroom.shop.Machine;

/**
 * Guards that stand in the table, and heights that may have been measured from the wrong place.
 *
 * <p>A guard stands in the table if, every axis at mid-travel, it overlaps the table's flat top
 * seen from above (touching does not count) and reaches below its surface; one whose heights count
 * from the spindle nose, if it does so with the nose at its lowest.
 */
final class GuardWarnings {
  private static final String UP_AND_DOWN = "Does the table or the knee go up and down here?";
  private static final String IN_THE_TABLE =
      "it stands in the table with the axes at mid-travel. Check the sign and from where it was measured";

  private GuardWarnings() {}

  static List<Warning> of(Machine machine) {
    List<Warning> warnings = new ArrayList<>();
    for (Guard guard : machine.guards()) {
      if (standsInTable(machine, guard)) {
        warnings.add(inTable(machine, guard));
      }
      headThatStays(machine, guard).ifPresent(warnings::add);
    }
    heightsFromFrame(machine).ifPresent(warnings::add);
    return warnings;
  }

  private static Warning inTable(Machine machine, Guard guard) {
    if (!guard.isRow()) {
      return Warning.machine(
          machine.name(), guard.reading().column(), "is so far below 0 that " + IN_THE_TABLE);
    }
    String column = guard.side().isPresent() ? "gap" : "z_min";
    return Warning.guard(machine.name(), guard.name(), column, IN_THE_TABLE);
  }

  private static boolean standsInTable(Machine machine, Guard guard) {
    if (guard.gap().isBlank()) {
      return false;
    }
    Rectangle plan = GuardStance.atMidTravel(machine, guard);
    Rectangle top = machine.top();
    return plan.x().gapTo(top.x()) < 0
        && plan.y().gapTo(top.y()) < 0
        && reachesBelowTop(machine, guard);
  }

  private static boolean reachesBelowTop(Machine machine, Guard guard) {
    long bottom = guard.limits().z().lo();
    if (!Length.isBounded(bottom)) {
      return true;
    }
    if (!machine.movesAgainstTable(guard).z()) {
      return bottom < 0;
    }
    return machine.noseMin().isKnown() && machine.noseMin().length() + bottom < 0;
  }

  private static Optional<Warning> headThatStays(Machine machine, Guard guard) {
    boolean isHead = guard.kind().strip().toLowerCase(Locale.ROOT).equals("head");
    // Whatever its heights: one without any is asked about, too.
    boolean staysAtItsHeight = guard.carriedBy().z() == machine.tableMoves().z();
    if (!isHead || !staysAtItsHeight) {
      return Optional.empty();
    }
    return Optional.of(
        Warning.guard(
            machine.name(),
            guard.name(),
            "carried_by",
            "a head that never moves up or down against the table. "
                + UP_AND_DOWN
                + " If it is the head, write carried_by head; if the knee, table_moves needs z"));
  }

  /** One line for all such guards of a machine, since one answer settles them. */
  private static Optional<Warning> heightsFromFrame(Machine machine) {
    List<String> names =
        machine.guardRows().stream()
            .filter(guard -> guard.carriedBy().equals(Axes.NONE) && guard.hasHeight())
            .map(Guard::name)
            .toList();
    if (names.isEmpty()) {
      return Optional.empty();
    }
    String text =
        machine.tableMoves().z()
            ? "the table goes up and down, so the heights of "
                + String.join(", ", names)
                + " count from the spindle nose. Were they measured from there?"
            : "the heights of "
                + String.join(", ", names)
                + " count from the table top, which is taken to stay at one height. "
                + UP_AND_DOWN
                + " Then table_moves needs z, and they must be measured from the spindle nose";
    return Optional.of(Warning.machine(machine.name(), "table_moves", text));
  }
}
