package org.jawroom.clearance.guard;

import java.util.Optional;
import org.jawroom.clearance.Certainty;
import org.jawroom.clearance.Setup;
import org.jawroom.clearance.Situation;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Box;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Length;
import org.jawroom.geometry.Rectangle;
import org.jawroom.shop.machine.Axes;
import org.jawroom.shop.machine.Guard;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.machine.Sides;

/**
 * The swept volume of one guard as seen from the table.
 *
 * <p>Where the guard moves against the table along x or y, it shifts by (spindle position −
 * mid-travel position); along z, by the height of the nose.
 *
 * @param stops by how much stops shorten the travel while cutting; see {@link Setup}
 */
record GuardSweep(Machine machine, Guard guard, Sides<Long> stops, Certainty certainty) {

  GuardSweep(Machine machine, Guard guard, Sides<Long> stops) {
    this(machine, guard, stops, Certainty.AT_WORST);
  }

  /** See {@link Machine#movesAgainstTable}. */
  Axes moves() {
    return machine.movesAgainstTable(guard);
  }

  /** Whether its height follows the spindle nose. */
  boolean goesWithNose() {
    return moves().z();
  }

  /** The swept box; empty if the situation leaves the guard out, see {@link NoseHeights}. */
  Optional<Box> box(Situation situation, NoseHeights heights) {
    Rectangle plan = plan(situation);
    Interval z = guard.limits().z();
    if (!goesWithNose()) {
      return Optional.of(new Box(plan.x(), plan.y(), z));
    }
    return heights.swept(situation, z).map(swept -> new Box(plan.x(), plan.y(), swept));
  }

  /** The swept rectangle in the table plane. */
  Rectangle plan(Situation situation) {
    Rectangle middle = atMidTravel();
    return new Rectangle(
        middle.x().sweptBy(shifts(Axis.X, situation)),
        middle.y().sweptBy(shifts(Axis.Y, situation)));
  }

  private Interval shifts(Axis axis, Situation situation) {
    if (!moves().has(axis)) {
      return Interval.of(0, 0);
    }
    if (situation == Situation.CUTTING) {
      // The table stands toward the front (left) when the spindle is at its greatest y (x).
      return axis == Axis.X
          ? Interval.of(stops.right() - machine.reachX(), machine.reachX() - stops.left())
          : Interval.of(stops.rear() - machine.reachY(), machine.reachY() - stops.front());
    }
    long shift =
        axis == Axis.X
            ? machine.loadX() - machine.spindleX()
            : machine.loadY() - machine.spindleY();
    return Interval.of(shift, shift);
  }

  /**
   * Its limits with every axis at mid-travel. A taped gap is measured at the end of travel that
   * brings guard and table nearest, so at mid-travel the face stands half the travel farther off.
   */
  Rectangle atMidTravel() {
    Interval x = guard.limits().x();
    Interval y = guard.limits().y();
    if (guard.side().isEmpty()) {
      return new Rectangle(x, y);
    }
    Interval gaps = Certainty.positions(guard.gap());
    long gap = certainty == Certainty.AT_WORST ? gaps.lo() : gaps.hi();
    long alongX = machine.tableLength() / 2 + gap + (moves().x() ? machine.reachX() : 0);
    long alongY = machine.tableWidth() / 2 + gap + (moves().y() ? machine.reachY() : 0);
    return switch (guard.side().get()) {
      case FRONT -> new Rectangle(x, Interval.of(-Length.ENDLESS, -alongY));
      case REAR -> new Rectangle(x, Interval.of(alongY, Length.ENDLESS));
      case LEFT -> new Rectangle(Interval.of(-Length.ENDLESS, -alongX), y);
      case RIGHT -> new Rectangle(Interval.of(alongX, Length.ENDLESS), y);
    };
  }
}
