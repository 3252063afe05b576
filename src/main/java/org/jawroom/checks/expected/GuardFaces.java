package org.jawroom.checks.expected;

import java.util.Optional;
import org.jawroom.clearance.Situation;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Length;
import org.jawroom.shop.Settings;
import org.jawroom.shop.machine.Guard;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.machine.Side;
import org.jawroom.shop.value.Measurand;
import org.jawroom.shop.vise.Vise;

/**
 * The readings behind each face of a guard as swept in one situation, by section 2 of the model:
 * every face is a sum of readings with fixed signs, in the table frame.
 */
final class GuardFaces {
  private final Settings settings;
  private final Machine machine;
  private final Vise vise;
  private final Situation situation;
  private final Terms terms;

  /**
   * @param vise whose bed the shortest tool must clear while cutting
   */
  GuardFaces(Settings settings, Machine machine, Vise vise, Situation situation, Terms terms) {
    this.settings = settings;
    this.machine = machine;
    this.vise = vise;
    this.situation = situation;
    this.terms = terms;
  }

  /**
   * One face; empty if the guard is without end that way.
   *
   * @param guard empty: the table
   * @param high whether the face at the greater coordinate
   */
  Optional<LinearForm> face(Optional<Guard> guard, Axis axis, boolean high) {
    if (guard.isEmpty()) {
      return table(axis, high);
    }
    Guard one = guard.get();
    if (one.side().isPresent() && isAlong(one.side().get(), axis)) {
      return isHigh(one.side().get()) == high ? Optional.empty() : Optional.of(taped(one, axis));
    }
    Interval limits = one.limits().along(axis);
    long limit = high ? limits.hi() : limits.lo();
    if (!Length.isBounded(limit)) {
      return Optional.empty();
    }
    String letter = axis.name().toLowerCase(java.util.Locale.ROOT);
    LinearForm own =
        terms.placed(
            new Measurand("guards", machine.name(), one.name(), letter + (high ? "_max" : "_min")),
            limit);
    return Optional.of(own.plus(shift(one, axis, high)));
  }

  private Optional<LinearForm> table(Axis axis, boolean high) {
    return switch (axis) {
      case X ->
          Optional.of(
              side(half("table_length", machine.tableLength()), high ? Side.RIGHT : Side.LEFT));
      case Y ->
          Optional.of(
              side(half("table_width", machine.tableWidth()), high ? Side.REAR : Side.FRONT));
      case Z -> high ? Optional.of(LinearForm.ZERO) : Optional.empty();
    };
  }

  private LinearForm side(LinearForm half, Side side) {
    LinearForm out = half.plus(known(side.word() + "_ledge", machine.ledges().get(side)));
    return isHigh(side) ? out : out.negated();
  }

  /** The face of what a gap is taped to. */
  private LinearForm taped(Guard guard, Axis axis) {
    Side side = guard.side().get();
    LinearForm half =
        axis == Axis.X
            ? half("table_length", machine.tableLength())
            : half("table_width", machine.tableWidth());
    Measurand gap =
        guard.isRow()
            ? Measurand.of(guard.reading(), machine.name(), guard.name())
            : Measurand.of(guard.reading(), machine.name());
    LinearForm out = half.plus(terms.position(gap, guard.gap()));
    if (machine.movesAgainstTable(guard).has(axis)) {
      out = out.plus(travel(axis));
    }
    LinearForm face = isHigh(side) ? out : out.negated();
    // The face is the low one of what lies beyond at the high side, and the other way round.
    return face.plus(shift(guard, axis, !isHigh(side)));
  }

  /** How the sweep over the travel, or the load position, shifts a face. */
  private LinearForm shift(Guard guard, Axis axis, boolean high) {
    if (!machine.movesAgainstTable(guard).has(axis)) {
      return LinearForm.ZERO;
    }
    if (axis == Axis.Z) {
      return nose(high);
    }
    if (situation == Situation.CUTTING) {
      return high ? travel(axis) : travel(axis).negated();
    }
    return axis == Axis.X ? loadX() : loadY();
  }

  private LinearForm loadX() {
    return machine.loadX() == machine.spindleX()
        ? LinearForm.ZERO
        : placed("load_x", machine.loadX()).minus(placed("spindle_x", machine.spindleX()));
  }

  /** Unless another load position is given, the table stands at the end nearest the operator. */
  private LinearForm loadY() {
    return machine.loadY() == machine.spindleY() + machine.reachY()
        ? travel(Axis.Y)
        : placed("load_y", machine.loadY()).minus(placed("spindle_y", machine.spindleY()));
  }

  /** The height of the nose for the low or the high face of what follows it. */
  private LinearForm nose(boolean high) {
    LinearForm highest = terms.reading(measurand("nose_max"), machine.noseMax());
    if (situation == Situation.LOADING || high) {
      return highest;
    }
    LinearForm lowest = terms.reading(measurand("nose_min"), machine.noseMin());
    if (settings.shortestTool().isPresent()) {
      LinearForm touching =
          terms
              .known(new Measurand("vises", vise.name(), "", "bed_height"), vise.base().bedHeight())
              .plus(LinearForm.constant(settings.shortestTool().getAsLong()));
      lowest = terms.nominal(lowest).compareTo(terms.nominal(touching)) >= 0 ? lowest : touching;
    }
    return terms.nominal(lowest).compareTo(terms.nominal(highest)) <= 0 ? lowest : highest;
  }

  /** Half the travel. */
  private LinearForm travel(Axis axis) {
    return axis == Axis.X
        ? half("travel_x", machine.travelX())
        : half("travel_y", machine.travelY());
  }

  private LinearForm half(String column, long value) {
    return known(column, value).half();
  }

  private LinearForm known(String column, long value) {
    return terms.known(measurand(column), value);
  }

  private LinearForm placed(String column, long value) {
    return terms.placed(measurand(column), value);
  }

  private Measurand measurand(String column) {
    return new Measurand("machines", machine.name(), "", column);
  }

  private static boolean isAlong(Side side, Axis axis) {
    return (side == Side.LEFT || side == Side.RIGHT ? Axis.X : Axis.Y) == axis;
  }

  private static boolean isHigh(Side side) {
    return side == Side.RIGHT || side == Side.REAR;
  }
}
