package org.jawroom.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jawroom.fixture.Guards;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Box;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Length;
import org.jawroom.shop.machine.Axes;
import org.jawroom.shop.machine.Guard;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.machine.Side;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.value.When;

/** A machine's guards as equivalent boxes at mid-travel, including those of its gaps. */
final class AsBoxes {
  private AsBoxes() {}

  static List<Guard> all(Machine machine) {
    List<Guard> boxes = new ArrayList<>();
    Box everywhere = new Box(Interval.ALL, Interval.ALL, Interval.ALL);
    for (Side side : Side.values()) {
      if (machine.gap(side).isKnown()) {
        Guard gap =
            Guards.beside(
                "gap " + side,
                "",
                Axes.NONE,
                side == Side.FRONT ? When.CUTTING : When.ALWAYS,
                side,
                machine.gap(side),
                everywhere);
        boxes.add(box(machine, gap));
      }
    }
    machine
        .guardRows()
        .forEach(guard -> boxes.add(guard.side().isPresent() ? box(machine, guard) : guard));
    return boxes;
  }

  /**
   * A taped guard stands half the travel farther off at mid-travel, if it moves against the table
   * at all.
   */
  private static Guard box(Machine machine, Guard guard) {
    Side side = guard.side().orElseThrow();
    Axis axis = side == Side.LEFT || side == Side.RIGHT ? Axis.X : Axis.Y;
    boolean moves = machine.tableMoves().has(axis) != guard.carriedBy().has(axis);
    long half = (axis == Axis.X ? machine.tableLength() : machine.tableWidth()) / 2;
    long travel = moves ? (axis == Axis.X ? machine.travelX() : machine.travelY()) / 2 : 0;
    long off = half + guard.gap().length() + travel;
    Interval beyond =
        side == Side.FRONT || side == Side.LEFT
            ? Interval.of(-Length.ENDLESS, -off)
            : Interval.of(off, Length.ENDLESS);
    Box limits = guard.limits();
    Box box =
        axis == Axis.X
            ? new Box(beyond, limits.y(), limits.z())
            : new Box(limits.x(), beyond, limits.z());
    return row(guard, guard.name(), guard.carriedBy(), guard.when(), box);
  }

  /** The guard fixed where it stands at the load position. */
  static Guard loading(Machine machine, Guard guard) {
    Box box = guard.limits();
    if (machine.tableMoves().x() != guard.carriedBy().x()) {
      box = shifted(box, Axis.X, machine.loadX() - machine.spindleX());
    }
    if (machine.tableMoves().y() != guard.carriedBy().y()) {
      box = shifted(box, Axis.Y, machine.loadY() - machine.spindleY());
    }
    Axes withTable =
        new Axes(machine.tableMoves().x(), machine.tableMoves().y(), guard.carriedBy().z());
    return row(guard, guard.name() + " loading", withTable, When.LOADING, box);
  }

  static Guard row(Guard guard, String name, Axes carriedBy, When when, Box limits) {
    return new Guard(
        name,
        guard.kind(),
        carriedBy,
        when,
        Optional.empty(),
        Dimension.NONE,
        limits,
        guard.clearance(),
        guard.tolerance());
  }

  static Box shifted(Box box, Axis axis, long by) {
    return switch (axis) {
      case X -> new Box(box.x().plus(by), box.y(), box.z());
      case Y -> new Box(box.x(), box.y().plus(by), box.z());
      case Z -> new Box(box.x(), box.y(), box.z().plus(by));
    };
  }
}
