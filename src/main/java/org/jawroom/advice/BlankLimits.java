package org.jawroom.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import java.util.function.LongFunction;
import org.jawroom.clearance.Setup;
import org.jawroom.geometry.Length;
import org.jawroom.placement.pairing.Model;
import org.jawroom.shop.Base;
import org.jawroom.shop.Column;
import org.jawroom.shop.Dimension;
import org.jawroom.shop.Guard;
import org.jawroom.shop.Handle;
import org.jawroom.shop.Jaws;
import org.jawroom.shop.Machine;
import org.jawroom.shop.Projection;
import org.jawroom.shop.Screw;
import org.jawroom.shop.Settings;
import org.jawroom.shop.Vise;

/**
 * Finds, for each blank that only helps when larger (gaps) or only when smaller (reaches, widths,
 * projections, thicknesses, handle radius and depth), the limit value at which the pairing still
 * fits, with every other blank at its best.
 */
final class BlankLimits {
  private static final List<Column> SMALLER_HELPS =
      List.of(
          Column.BASE_WIDTH,
          Column.REAR_REACH,
          Column.FRONT_REACH,
          Column.FIXED_JAW_THICKNESS,
          Column.MOVING_JAW_THICKNESS,
          Column.REAR_PROJECTION_CLOSED,
          Column.REAR_PROJECTION_OPEN,
          Column.FRONT_PROJECTION_CLOSED,
          Column.FRONT_PROJECTION_OPEN,
          Column.HANDLE_RADIUS,
          Column.HANDLE_DEPTH);

  private final Settings settings;
  private final Machine machine;
  private final Vise vise;
  private final List<Column> missing;
  private final List<BlankLimit> limits = new ArrayList<>();

  private BlankLimits(Settings settings, Machine machine, Vise vise, List<Column> missing) {
    this.settings = settings;
    this.machine = machine;
    this.vise = vise;
    this.missing = missing;
  }

  /** The limits in the order of {@code missing}, the blank columns of an unknown pairing. */
  static List<BlankLimit> of(Settings settings, Machine machine, Vise vise, List<Column> missing) {
    BlankLimits builder = new BlankLimits(settings, machine, vise, missing);
    missing.forEach(builder::add);
    return builder.limits;
  }

  private void add(Column column) {
    Machine best = BlankGaps.blanksAt(machine, Length.LARGEST);
    for (int i = 0; i < machine.guards().size(); i++) {
      Guard guard = machine.guards().get(i);
      Guard atBest = best.guards().get(i);
      if (guard.reading() == column && guard.gap().isBlank()) {
        atLeast(
            column,
            guard.isRow() ? guard.name() : "",
            value -> best.withInstead(atBest, atBest.withGap(Dimension.of(value))));
      }
    }
    if (SMALLER_HELPS.contains(column)) {
      atMost(column, best);
    }
  }

  private void atLeast(Column column, String guard, LongFunction<Machine> filled) {
    Vise best = viseAtBest();
    OptionalLong least =
        MonotoneSearch.from(
            -Length.LARGEST, Length.LARGEST, value -> fits(filled.apply(value), best));
    boolean always = fits(filled.apply(-Length.LARGEST), best);
    add(column, guard, always, Relation.AT_LEAST, least);
  }

  private void atMost(Column column, Machine best) {
    Vise others = viseAtBest();
    OptionalLong most =
        MonotoneSearch.downFrom(
            Length.LARGEST, 0, value -> fits(best, with(others, column, Dimension.of(value))));
    boolean always = fits(best, with(others, column, Dimension.of(Length.LARGEST)));
    add(column, "", always, Relation.AT_MOST, most);
  }

  private void add(
      Column column, String guard, boolean always, Relation relation, OptionalLong limit) {
    if (always) {
      limits.add(new BlankLimit(column, guard, Relation.ALWAYS, OptionalLong.empty()));
    } else {
      limits.add(
          new BlankLimit(column, guard, limit.isPresent() ? relation : Relation.NEVER, limit));
    }
  }

  private boolean fits(Machine filled, Vise filledVise) {
    return Model.of(settings, filled, filledVise, Setup.PLAIN).isClearWithHandRoom();
  }

  /** The vise with every blank that only helps when smaller set to 0. */
  private Vise viseAtBest() {
    Vise best = vise;
    for (Column column : missing) {
      if (SMALLER_HELPS.contains(column)) {
        best = with(best, column, Dimension.of(0));
      }
    }
    return best;
  }

  private static Vise with(Vise vise, Column column, Dimension filled) {
    Base base = vise.base();
    Jaws jaws = vise.jaws();
    Screw screw = vise.screw();
    Handle handle = vise.handle();
    return switch (column) {
      case BASE_WIDTH ->
          vise.withBase(new Base(base.bedHeight(), filled, base.rearReach(), base.frontReach()));
      case REAR_REACH ->
          vise.withBase(new Base(base.bedHeight(), base.width(), filled, base.frontReach()));
      case FRONT_REACH ->
          vise.withBase(new Base(base.bedHeight(), base.width(), base.rearReach(), filled));
      case FIXED_JAW_THICKNESS -> vise.withJaws(jaws.withThickness(filled, jaws.movingThickness()));
      case MOVING_JAW_THICKNESS -> vise.withJaws(jaws.withThickness(jaws.fixedThickness(), filled));
      case REAR_PROJECTION_CLOSED ->
          vise.withScrew(screw.withRear(new Projection(filled, screw.rear().open())));
      case REAR_PROJECTION_OPEN ->
          vise.withScrew(screw.withRear(new Projection(screw.rear().closed(), filled)));
      case FRONT_PROJECTION_CLOSED ->
          vise.withScrew(screw.withFront(new Projection(filled, screw.front().open())));
      case FRONT_PROJECTION_OPEN ->
          vise.withScrew(screw.withFront(new Projection(screw.front().closed(), filled)));
      case HANDLE_RADIUS ->
          vise.withHandle(
              new Handle(filled, handle.depth(), handle.onWhileCutting(), handle.fullSwing()));
      case HANDLE_DEPTH ->
          vise.withHandle(
              new Handle(handle.radius(), filled, handle.onWhileCutting(), handle.fullSwing()));
      default -> throw new IllegalArgumentException(column + " has no limit");
    };
  }
}
