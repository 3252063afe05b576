package org.jawroom.shop.vise;

import java.util.List;
import org.jawroom.shop.value.Column;
import org.jawroom.shop.value.Dimension;

/** The readings of a vise's body by their columns, and the vise with another value of one. */
public final class ViseReadings {

  /** The columns in which a smaller value only helps. */
  public static final List<Column> SMALLER_HELPS =
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

  private ViseReadings() {}

  /** The reading of a column of the vise's body. */
  public static Dimension of(Vise vise, Column column) {
    return switch (column) {
      case BASE_WIDTH -> vise.base().width();
      case REAR_REACH -> vise.base().rearReach();
      case FRONT_REACH -> vise.base().frontReach();
      case FIXED_JAW_THICKNESS -> vise.jaws().fixedThickness();
      case MOVING_JAW_THICKNESS -> vise.jaws().movingThickness();
      case REAR_PROJECTION_CLOSED -> vise.screw().rear().closed();
      case REAR_PROJECTION_OPEN -> vise.screw().rear().open();
      case FRONT_PROJECTION_CLOSED -> vise.screw().front().closed();
      case FRONT_PROJECTION_OPEN -> vise.screw().front().open();
      case SCREW_HEIGHT -> vise.screw().height();
      case SCREW_DIAMETER -> vise.screw().diameter();
      case HANDLE_RADIUS -> vise.handle().radius();
      case HANDLE_DEPTH -> vise.handle().depth();
      default -> throw noReading(column);
    };
  }

  /** The vise with {@code value} in that column. */
  public static Vise with(Vise vise, Column column, Dimension value) {
    return switch (column) {
      case BASE_WIDTH, REAR_REACH, FRONT_REACH -> vise.withBase(base(vise.base(), column, value));
      case FIXED_JAW_THICKNESS ->
          vise.withJaws(vise.jaws().withThickness(value, vise.jaws().movingThickness()));
      case MOVING_JAW_THICKNESS ->
          vise.withJaws(vise.jaws().withThickness(vise.jaws().fixedThickness(), value));
      case HANDLE_RADIUS, HANDLE_DEPTH -> vise.withHandle(handle(vise.handle(), column, value));
      default -> vise.withScrew(screw(vise.screw(), column, value));
    };
  }

  private static Base base(Base base, Column column, Dimension value) {
    return new Base(
        base.bedHeight(),
        column == Column.BASE_WIDTH ? value : base.width(),
        column == Column.REAR_REACH ? value : base.rearReach(),
        column == Column.FRONT_REACH ? value : base.frontReach());
  }

  private static Handle handle(Handle handle, Column column, Dimension value) {
    return new Handle(
        column == Column.HANDLE_RADIUS ? value : handle.radius(),
        column == Column.HANDLE_DEPTH ? value : handle.depth(),
        handle.onWhileCutting(),
        handle.fullSwing());
  }

  private static Screw screw(Screw screw, Column column, Dimension value) {
    return switch (column) {
      case REAR_PROJECTION_CLOSED -> screw.withRear(new Projection(value, screw.rear().open()));
      case REAR_PROJECTION_OPEN -> screw.withRear(new Projection(screw.rear().closed(), value));
      case FRONT_PROJECTION_CLOSED -> screw.withFront(new Projection(value, screw.front().open()));
      case FRONT_PROJECTION_OPEN -> screw.withFront(new Projection(screw.front().closed(), value));
      case SCREW_HEIGHT -> new Screw(screw.rear(), screw.front(), value, screw.diameter());
      case SCREW_DIAMETER -> new Screw(screw.rear(), screw.front(), screw.height(), value);
      default -> throw noReading(column);
    };
  }

  private static IllegalArgumentException noReading(Column column) {
    return new IllegalArgumentException(column + " is no reading of a vise's body");
  }
}
