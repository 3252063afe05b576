package org.jawroom.plausibility;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jawroom.clearance.guard.GuardStance;
import org.jawroom.geometry.Length;
import org.jawroom.geometry.Rectangle;
import org.jawroom.plausibility.warning.Seriousness;
import org.jawroom.plausibility.warning.Warning;
import org.jawroom.shop.machine.Axes;
import org.jawroom.shop.machine.Guard;
import org.jawroom.shop.machine.Machine;

/**
 * Warnings about guards that stand in the table, and about heights that may have been measured from
 * the wrong place.
 *
 * <p>A guard stands in the table if, with every axis at mid-travel, it overlaps the table's flat
 * top seen from above (touching does not count) and reaches below its surface. For a guard whose
 * heights count from the spindle nose the nose is taken at its lowest.
 */
final class GuardWarnings {
  private static final String UP_AND_DOWN = "Does the table or the knee go up and down here?";
  private static final String IN_THE_TABLE =
      "it stands in the table with the axes at mid-travel. Check the sign and from where it was"
          + " measured";

  private GuardWarnings() {}

  static List<Warning> of(Machine machine) {
    List<Warning> warnings = new ArrayList<>();
    for (Guard guard : machine.guards()) {
      if (standsInTable(machine, guard)) {
        warnings.add(inTable(machine, guard));
      }
      headThatStays(machine, guard).ifPresent(warnings::add);
      heightFromNose(machine, guard).ifPresent(warnings::add);
    }
    heightsFromTable(machine).ifPresent(warnings::add);
    return warnings;
  }

  private static Warning inTable(Machine machine, Guard guard) {
    if (!guard.isRow()) {
      return Warning.machine(
          Seriousness.WRONG,
          machine.name(),
          guard.reading().column(),
          "is so far below 0 that " + IN_THE_TABLE);
    }
    String column = guard.side().isPresent() ? "gap" : "z_min";
    return Warning.guard(Seriousness.WRONG, machine.name(), guard.name(), column, IN_THE_TABLE);
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
    // A head without heights is doubted, too.
    boolean staysAtItsHeight = guard.carriedBy().z() == machine.tableMoves().z();
    if (!isHead || !staysAtItsHeight) {
      return Optional.empty();
    }
    return Optional.of(
        Warning.guard(
            Seriousness.WRONG,
            machine.name(),
            guard.name(),
            "carried_by",
            "a head that never moves up or down against the table. "
                + UP_AND_DOWN
                + " If it is the head, write carried_by head; if the knee, table_moves needs z"));
  }

  /**
   * Doubts heights that count from the table top although the table may go up and down: those of a
   * machine on which nothing moves along z. One line for all such guards, since one answer settles
   * them. A machine with a guard that does move along z was measured with that in mind.
   */
  private static Optional<Warning> heightsFromTable(Machine machine) {
    List<Guard> rows = machine.guardRows();
    List<String> names =
        rows.stream()
            .filter(row -> row.carriedBy().equals(Axes.NONE) && row.hasHeight())
            .map(Guard::name)
            .toList();
    if (names.isEmpty() || rows.stream().anyMatch(row -> machine.movesAgainstTable(row).z())) {
      return Optional.empty();
    }
    return Optional.of(
        Warning.machine(
            Seriousness.UNSEEN,
            machine.name(),
            "table_moves",
            "without z, so the heights of "
                + String.join(", ", names)
                + " count from a table top that stays at one height, and no guard moves with the"
                + " head. "
                + UP_AND_DOWN
                + " Then table_moves needs z, and they must be measured from the spindle nose. If"
                + " it is the head, give it a row with carried_by head"));
  }

  /**
   * On a machine whose table goes up and down: a guard whose underside lies at least as far above
   * the spindle nose as the nose may lie above the table, which looks like a height that was
   * measured from the table top.
   */
  private static Optional<Warning> heightFromNose(Machine machine, Guard guard) {
    long bottom = guard.limits().z().lo();
    if (!guard.isRow()
        || !machine.tableMoves().z()
        || !machine.movesAgainstTable(guard).z()
        || !Length.isBounded(bottom)
        || !machine.noseMin().isKnown()
        || machine.noseMin().length() <= 0
        || bottom < machine.noseMin().length()) {
      return Optional.empty();
    }
    return Optional.of(
        Warning.guard(
            Seriousness.WRONG,
            machine.name(),
            guard.name(),
            "z_min",
            SpokenLength.of(bottom)
                + " above the spindle nose, from which heights count where the table goes up and"
                + " down. Was it measured from the table top?"));
  }
}
