package org.jawroom.shop;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Length;
import org.jawroom.shop.machine.Guard;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.machine.Side;
import org.jawroom.shop.value.Column;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.value.Measurand;
import org.jawroom.shop.vise.Bolt;
import org.jawroom.shop.vise.Mount;
import org.jawroom.shop.vise.Vise;
import org.jawroom.shop.vise.ViseReadings;

/**
 * A reading of the tables that is blank or known within bounds only.
 *
 * @param measurand the row and column that it stands in; the item of a bolt is its mount
 * @param value open; blank for a mass
 */
public record OpenReading(Column column, Measurand measurand, Dimension value) {
  public OpenReading {
    if (!value.isOpen()) {
      throw new IllegalArgumentException(measurand.reading() + " is not open");
    }
  }

  /** The open gap of a guard of the machine. */
  public static OpenReading of(Machine machine, Guard guard) {
    return new OpenReading(
        guard.reading(),
        guard.isRow()
            ? Measurand.of(guard.reading(), machine.name(), guard.name())
            : Measurand.of(guard.reading(), machine.name()),
        guard.gap());
  }

  /** The open length of a job's longest tool. */
  public static OpenReading of(Job job) {
    return new OpenReading(
        Column.TOOL_LENGTH, Measurand.of(Column.TOOL_LENGTH, job.name()), job.toolLength());
  }

  /** An open reading in the row of the machine itself. */
  public static OpenReading of(Machine machine, Column column) {
    return new OpenReading(
        column, Measurand.of(column, machine.name()), ofMachine(machine, column));
  }

  /**
   * The open readings of a machine and a vise behind columns, in the order of the columns; those of
   * jobs are left out.
   */
  public static List<OpenReading> of(Machine machine, Vise vise, List<Column> columns) {
    return columns.stream().flatMap(column -> of(machine, vise, column)).toList();
  }

  /** Whether it stands in a table of the machine rather than of the vise. */
  public boolean isOfMachine() {
    return isOfMachine(column);
  }

  private static boolean isOfMachine(Column column) {
    // The constants are in the order of the tables: machines, guards, then those of the vise.
    return column.compareTo(Column.GUARD_GAP) <= 0;
  }

  private static Stream<OpenReading> of(Machine machine, Vise vise, Column column) {
    return switch (column) {
      case GUARD_GAP ->
          machine.guardRows().stream()
              .filter(guard -> guard.gap().isOpen())
              .map(guard -> of(machine, guard));
      case HOLE_U, HOLE_V -> holes(vise, column);
      case JOB_MASS, TOOL_LENGTH -> Stream.empty();
      default ->
          isOfMachine(column)
              ? Stream.of(of(machine, column))
              : Stream.of(
                  new OpenReading(column, Measurand.of(column, vise.row()), ofVise(vise, column)));
    };
  }

  private static Stream<OpenReading> holes(Vise vise, Column column) {
    Set<OpenReading> holes = new LinkedHashSet<>();
    for (Mount mount : vise.mounts()) {
      for (Bolt bolt : mount.bolts()) {
        Dimension size = column == Column.HOLE_U ? bolt.holeU() : bolt.holeV();
        if (!mount.own() && size.isOpen()) {
          holes.add(new OpenReading(column, Measurand.of(column, vise.row(), mount.name()), size));
        }
      }
    }
    return holes.stream();
  }

  private static Dimension ofMachine(Machine machine, Column column) {
    return switch (column) {
      case SLOT_WIDTH -> machine.slots().width();
      case SLOT_PITCH -> machine.slots().pitch();
      case FRONT_GAP -> machine.gap(Side.FRONT);
      case REAR_GAP -> machine.gap(Side.REAR);
      case LEFT_GAP -> machine.gap(Side.LEFT);
      case RIGHT_GAP -> machine.gap(Side.RIGHT);
      case NOSE_MIN -> machine.noseMin();
      case NOSE_MAX -> machine.noseMax();
      case MAX_LOAD -> Dimension.BLANK;
      default -> throw new IllegalArgumentException(column.path() + " is not the machine's own");
    };
  }

  private static Dimension ofVise(Vise vise, Column column) {
    return switch (column) {
      case BOLT_SPACING -> twice(ownBolt(vise).v());
      case BOLT_U -> ownBolt(vise).u();
      case BOLT_HOLE_U -> ownBolt(vise).holeU();
      case BOLT_HOLE_V -> ownBolt(vise).holeV();
      case VISE_MASS -> Dimension.BLANK;
      default -> ViseReadings.of(vise, column);
    };
  }

  /** The one at +v. */
  private static Bolt ownBolt(Vise vise) {
    List<Bolt> bolts = vise.mounts().stream().filter(Mount::own).findFirst().orElseThrow().bolts();
    return bolts.get(bolts.size() - 1);
  }

  private static Dimension twice(Dimension half) {
    if (half.isBlank()) {
      return half;
    }
    Interval values = half.values(0);
    return Dimension.within(
        2 * values.lo(), Length.isBounded(2 * values.hi()) ? 2 * values.hi() : Length.ENDLESS);
  }
}
