package org.jawroom.report.readings;

import java.util.Optional;
import java.util.Set;
import org.jawroom.clearance.Situation;
import org.jawroom.clearance.gap.Limit;
import org.jawroom.geometry.Axis;
import org.jawroom.shop.machine.Guard;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.machine.Side;

/** The readings that locate the face of a guard relative to the table. */
final class GuardReadings {
  private final Machine machine;
  private final Limit limit;
  private final boolean lowFace;
  private final Set<String> readings;

  private GuardReadings(Machine machine, Limit limit, boolean lowFace, Set<String> readings) {
    this.machine = machine;
    this.limit = limit;
    this.lowFace = lowFace;
    this.readings = readings;
  }

  /** Adds them; {@code lowFace}: the face is the guard's low one along the limiting axis. */
  static void add(Machine machine, Limit limit, boolean lowFace, Set<String> readings) {
    GuardReadings guard = new GuardReadings(machine, limit, lowFace, readings);
    Optional<Guard> source = limit.guard().guard();
    if (source.isEmpty()) {
      guard.table();
    } else if (source.get().side().filter(side -> isAlong(side, limit.axis())).isPresent()) {
      guard.gap(
          source.get().isRow() ? "gap of " + source.get().name() : source.get().reading().column());
    } else {
      guard.box(source.get());
    }
  }

  private static boolean isAlong(Side side, Axis axis) {
    return axis == (side == Side.FRONT || side == Side.REAR ? Axis.Y : Axis.X);
  }

  private boolean moves() {
    return limit.guard().moves().has(limit.axis());
  }

  private void table() {
    if (limit.axis() != Axis.Z) {
      // The part is beside the table: beyond its low or its high side.
      edge(lowFace);
      Side side =
          limit.axis() == Axis.Y
              ? lowFace ? Side.FRONT : Side.REAR
              : lowFace ? Side.LEFT : Side.RIGHT;
      if (machine.ledges().get(side) > 0) {
        readings.add(side.word() + "_ledge");
      }
    }
  }

  /** A gap is taped from the nearer edge of the table. */
  private void gap(String reading) {
    readings.add(reading);
    // A guard in front of the table faces it with its high face.
    edge(!lowFace);
    if (moves() && limit.situation() == Situation.LOADING) {
      readings.add("half of travel_" + letter());
      loadPlace();
    }
  }

  private void box(Guard guard) {
    readings.add(letter() + (lowFace ? "_min of " : "_max of ") + guard.name());
    if (limit.axis() == Axis.Z) {
      if (moves()) {
        boolean lowest = lowFace && limit.situation() == Situation.CUTTING;
        readings.add(lowest ? "nose_min or the shortest tool" : "nose_max");
      }
      return;
    }
    if (SlotReadings.fromEdge(machine.slots(), limit.axis())) {
      readings.add("half of " + size());
    }
    if (moves()) {
      if (limit.situation() == Situation.CUTTING) {
        readings.add("half of travel_" + letter());
      } else {
        loadPlace();
      }
    }
  }

  /** Adds the readings from the reference of the slots to an edge of the table. */
  private void edge(boolean lowEdge) {
    if (!SlotReadings.fromEdge(machine.slots(), limit.axis())) {
      readings.add("half of " + size());
    } else if (!lowEdge) {
      readings.add(size());
    }
  }

  private void loadPlace() {
    readings.add("load_" + letter());
    readings.add("spindle_" + letter());
  }

  private String size() {
    return limit.axis() == Axis.X ? "table_length" : "table_width";
  }

  private String letter() {
    return limit.axis().letter();
  }
}
