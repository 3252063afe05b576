package org.jawroom.advice.tape;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.LongFunction;
import java.util.function.UnaryOperator;
import org.jawroom.advice.tape.FillableReading.Filled;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Length;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.shop.machine.Guard;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.machine.Slots;
import org.jawroom.shop.value.Column;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.value.Measurand;
import org.jawroom.shop.vise.Bolt;
import org.jawroom.shop.vise.Mount;
import org.jawroom.shop.vise.Vise;
import org.jawroom.shop.vise.ViseReadings;

/** Finds the open readings that an unknown pairing needs, in the order of the tables. */
final class OpenReadings {
  private static final String MOUNTS = Column.HOLE_U.table();

  private final Machine machine;
  private final Vise vise;
  private final List<FillableReading> found = new ArrayList<>();

  private OpenReadings(Machine machine, Vise vise) {
    this.machine = machine;
    this.vise = vise;
  }

  static List<FillableReading> of(Outcome outcome) {
    OpenReadings readings = new OpenReadings(outcome.machine(), outcome.vise());
    outcome.missing().forEach(readings::add);
    return readings.found;
  }

  private void add(Column column) {
    switch (column) {
      case SLOT_WIDTH, SLOT_PITCH -> slots(column);
      case NOSE_MIN, NOSE_MAX -> nose(column);
      case FRONT_GAP, REAR_GAP, LEFT_GAP, RIGHT_GAP, GUARD_GAP -> gaps(column);
      case BOLT_SPACING, BOLT_U, BOLT_HOLE_U, BOLT_HOLE_V, HOLE_U, HOLE_V -> bolts(column);
      case MAX_LOAD, VISE_MASS, JOB_MASS, TOOL_LENGTH ->
          throw new IllegalArgumentException(column + " makes no pairing unknown");
      default ->
          ofVise(
              Measurand.of(column, vise.row()),
              column,
              ViseReadings.of(vise, column),
              value -> ViseReadings.with(vise, column, Dimension.of(value)));
    }
  }

  private void slots(Column column) {
    Slots slots = machine.slots();
    boolean width = column == Column.SLOT_WIDTH;
    ofMachine(
        Measurand.of(column, machine.name()),
        column,
        width ? slots.width() : slots.pitch(),
        machine.provenance().tolerance(),
        value -> {
          Dimension known = Dimension.of(value);
          Slots filled =
              new Slots(
                  slots.direction(),
                  slots.count(),
                  width ? known : slots.width(),
                  width ? slots.pitch() : known,
                  slots.first(),
                  slots.positions(),
                  slots.length());
          return machine.toBuilder().slots(filled).build();
        });
  }

  private void nose(Column column) {
    boolean min = column == Column.NOSE_MIN;
    ofMachine(
        Measurand.of(column, machine.name()),
        column,
        min ? machine.noseMin() : machine.noseMax(),
        machine.provenance().tolerance(),
        value -> {
          Dimension known = Dimension.of(value);
          return machine.toBuilder()
              .nose(min ? known : machine.noseMin(), min ? machine.noseMax() : known)
              .build();
        });
  }

  private void gaps(Column column) {
    for (Guard guard : machine.guards()) {
      if (guard.reading() == column && guard.gap().isOpen()) {
        ofMachine(
            guard.isRow()
                ? Measurand.of(column, machine.name(), guard.name())
                : Measurand.of(column, machine.name()),
            column,
            guard.gap(),
            guard.tolerance().orElse(machine.provenance().tolerance()),
            value -> machine.withInstead(guard, guard.withGap(Dimension.of(value))));
      }
    }
  }

  private void bolts(Column column) {
    for (Mount mount : vise.mounts()) {
      if (!mount.own()) {
        ofRows(mount, column);
      } else if (column == Column.BOLT_SPACING) {
        own(mount, column, OpenReadings::spacing, OpenReadings::spaced);
      } else if (column != Column.HOLE_U && column != Column.HOLE_V) {
        own(mount, column, one -> of(one, column), (one, value) -> each(one, column, value));
      }
    }
  }

  private interface Change {
    Mount of(Mount mount, Dimension value);
  }

  private void own(Mount mount, Column column, Function<Mount, Dimension> reading, Change change) {
    Dimension bounds = reading.apply(mount);
    if (bounds.isOpen()) {
      ofVise(
          Measurand.of(column, vise.row()),
          column,
          bounds,
          value -> with(mount, change.of(mount, Dimension.of(value))));
    }
  }

  private static Dimension of(Mount mount, Column column) {
    return of(mount.bolts().get(0), column);
  }

  private static Mount each(Mount mount, Column column, Dimension value) {
    return new Mount(
        mount.name(),
        mount.own(),
        mount.bolts().stream().map(bolt -> with(bolt, column, value)).toList());
  }

  /** The bolt at +v stands half of the spacing off the middle. */
  private static Dimension spacing(Mount mount) {
    Dimension half = mount.bolts().get(1).v();
    return half.isBlank() || half.isKnown() ? half : Dimension.within(2 * half.lo(), 2 * half.hi());
  }

  private static Mount spaced(Mount mount, Dimension spacing) {
    Bolt bolt = mount.bolts().get(0);
    return Mount.baseBolts(bolt.u(), spacing, bolt.holeU(), bolt.holeV());
  }

  /**
   * Each row of the table of mounts is one bolt; several of one mount are numbered as they stand.
   */
  private void ofRows(Mount mount, Column column) {
    String word =
        switch (column) {
          case BOLT_U -> "u";
          case BOLT_SPACING -> "v";
          case HOLE_U, HOLE_V -> column.column();
          default -> "";
        };
    for (int i = 0; i < mount.bolts().size() && !word.isEmpty(); i++) {
      int at = i;
      Dimension bounds = of(mount.bolts().get(at), column);
      if (bounds.isOpen()) {
        String item = mount.bolts().size() == 1 ? mount.name() : mount.name() + " bolt " + (at + 1);
        ofVise(
            new Measurand(MOUNTS, vise.row(), item, word),
            column,
            bounds,
            value -> with(mount, withBolt(mount, at, column, Dimension.of(value))));
      }
    }
  }

  private static Mount withBolt(Mount mount, int at, Column column, Dimension value) {
    List<Bolt> bolts = new ArrayList<>(mount.bolts());
    bolts.set(at, with(bolts.get(at), column, value));
    return new Mount(mount.name(), mount.own(), bolts);
  }

  private static Dimension of(Bolt bolt, Column column) {
    return switch (column) {
      case BOLT_U -> bolt.u();
      case BOLT_SPACING -> bolt.v();
      case BOLT_HOLE_U, HOLE_U -> bolt.holeU();
      default -> bolt.holeV();
    };
  }

  private static Bolt with(Bolt bolt, Column column, Dimension value) {
    return switch (column) {
      case BOLT_U -> new Bolt(value, bolt.v(), bolt.holeU(), bolt.holeV());
      case BOLT_SPACING -> new Bolt(bolt.u(), value, bolt.holeU(), bolt.holeV());
      case BOLT_HOLE_U, HOLE_U -> new Bolt(bolt.u(), bolt.v(), value, bolt.holeV());
      default -> new Bolt(bolt.u(), bolt.v(), bolt.holeU(), value);
    };
  }

  private Vise with(Mount mount, Mount instead) {
    UnaryOperator<Mount> change = one -> one.equals(mount) ? instead : one;
    return vise.toBuilder().mounts(vise.mounts().stream().map(change).toList()).build();
  }

  private void ofMachine(
      Measurand reading,
      Column column,
      Dimension bounds,
      long tolerance,
      LongFunction<Machine> filled) {
    found.add(
        new FillableReading(
            reading, column, bounds, tolerance, value -> new Filled(filled.apply(value), vise)));
  }

  private void ofVise(
      Measurand reading, Column column, Dimension bounds, LongFunction<Vise> filled) {
    found.add(
        new FillableReading(
            reading,
            column,
            bounds,
            vise.provenance().tolerance(),
            value -> new Filled(machine, filled.apply(value))));
  }

  /**
   * The values to try of a reading without a limit: its ends and evenly between, or of a blank what
   * machines and vises have.
   */
  static Interval tried(FillableReading reading) {
    Interval usual =
        switch (reading.column()) {
          case SLOT_WIDTH, BOLT_HOLE_U, BOLT_HOLE_V, HOLE_U, HOLE_V -> Interval.of(0, 60);
          case BOLT_U -> Interval.of(-500, 500);
          case NOSE_MIN, NOSE_MAX -> Interval.of(0, 1500);
          default -> Interval.of(0, 500);
        };
    long lo = usual.lo() * Length.MM;
    long hi = usual.hi() * Length.MM;
    Dimension bounds = reading.bounds();
    if (bounds.isBlank()) {
      return Interval.of(lo, hi);
    }
    boolean low = Length.isBounded(bounds.lo());
    boolean high = Length.isBounded(bounds.hi());
    long from = low ? bounds.lo() : Math.min(lo, bounds.hi());
    return Interval.of(from, high ? bounds.hi() : Math.max(hi, from));
  }
}
