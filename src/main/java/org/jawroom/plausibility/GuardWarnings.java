package org.jawroom.plausibility;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Length;
import org.jawroom.shop.Axes;
import org.jawroom.shop.Dimension;
import org.jawroom.shop.Guard;
import org.jawroom.shop.Machine;
import org.jawroom.shop.Side;

/**
 * Guards that stand in the table, and heights that may have been measured from the wrong place.
 *
 * <p>A guard stands in the table if, every axis at mid-travel, it overlaps the table's flat top
 * seen from above (touching does not count) and reaches below its surface; one whose heights count
 * from the spindle nose, if it does so with the nose at its lowest.
 */
final class GuardWarnings {
  private static final String UP_AND_DOWN = "Does the table or the knee go up and down here?";

  private GuardWarnings() {}

  static List<Warning> of(Machine machine) {
    List<Warning> warnings = new ArrayList<>();
    for (Side side : Side.values()) {
      Dimension gap = machine.gap(side);
      if (gap.isKnown() && gap.length() + halfTravel(machine, Axes.NONE, side) < 0) {
        warnings.add(
            Warning.machine(
                machine.name(), side.word() + "_gap", "is so far below 0 that " + IN_THE_TABLE));
      }
    }
    for (Guard guard : machine.guardRows()) {
      standsInTable(machine, guard).ifPresent(warnings::add);
      headThatStays(machine, guard).ifPresent(warnings::add);
    }
    heightsFromFrame(machine).ifPresent(warnings::add);
    return warnings;
  }

  private static final String IN_THE_TABLE =
      "it stands in the table with the axes at mid-travel. Check the sign and from where it was measured";

  private static Optional<Warning> standsInTable(Machine machine, Guard guard) {
    boolean over =
        guard.side().isPresent()
            ? isOverFromSide(machine, guard)
            : overlap(guard.limits().x(), machine.tableLength())
                && overlap(guard.limits().y(), machine.tableWidth());
    if (!over || !reachesBelowTop(machine, guard)) {
      return Optional.empty();
    }
    String column = guard.side().isPresent() ? "gap" : "z_min";
    return Optional.of(Warning.guard(machine.name(), guard.name(), column, IN_THE_TABLE));
  }

  private static boolean isOverFromSide(Machine machine, Guard guard) {
    Side side = guard.side().orElseThrow();
    boolean ahead = side == Side.FRONT || side == Side.REAR;
    boolean beside =
        ahead
            ? overlap(guard.limits().x(), machine.tableLength())
            : overlap(guard.limits().y(), machine.tableWidth());
    return beside
        && guard.gap().isKnown()
        && guard.gap().length() + halfTravel(machine, guard.carriedBy(), side) < 0;
  }

  private static boolean reachesBelowTop(Machine machine, Guard guard) {
    long bottom = guard.limits().z().lo();
    if (!Length.isBounded(bottom)) {
      return true;
    }
    if (!countsFromNose(machine, guard)) {
      return bottom < 0;
    }
    return machine.noseMin().isKnown() && machine.noseMin().length() + bottom < 0;
  }

  /** Half the travel by which a guard taped from {@code side} moves against the table, else 0. */
  private static long halfTravel(Machine machine, Axes carriedBy, Side side) {
    if (side == Side.LEFT || side == Side.RIGHT) {
      return carriedBy.x() == machine.tableMoves().x() ? 0 : machine.travelX() / 2;
    }
    return carriedBy.y() == machine.tableMoves().y() ? 0 : machine.travelY() / 2;
  }

  private static boolean overlap(Interval limits, long tableSize) {
    return limits.gapTo(Interval.around(0, tableSize / 2)) < 0;
  }

  private static boolean countsFromNose(Machine machine, Guard guard) {
    return guard.carriedBy().z() != machine.tableMoves().z();
  }

  private static Optional<Warning> headThatStays(Machine machine, Guard guard) {
    boolean isHead = guard.kind().strip().toLowerCase(Locale.ROOT).equals("head");
    if (!isHead || countsFromNose(machine, guard)) {
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
            .filter(guard -> guard.carriedBy().equals(Axes.NONE) && hasHeights(guard))
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

  private static boolean hasHeights(Guard guard) {
    Interval z = guard.limits().z();
    return Length.isBounded(z.lo()) || Length.isBounded(z.hi());
  }
}
