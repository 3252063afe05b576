package org.jawroom.shop.machine;

import java.util.Optional;
import java.util.OptionalLong;
import org.jawroom.geometry.Box;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Length;
import org.jawroom.shop.value.Column;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.value.Require;
import org.jawroom.shop.value.When;

/**
 * An obstacle beside the table: a row of {@code guards}, or whatever one of the four taped gaps of
 * a row of {@code machines} was measured to.
 *
 * @param reading the column of the gap: {@link Column#GUARD_GAP} for a row of {@code guards}, else
 *     the machine's own, {@link Column#FRONT_GAP} to {@link Column#RIGHT_GAP}
 * @param name unique on its machine
 * @param kind as written in the table; never changes a number
 * @param carriedBy the axes that carry it ("table" already resolved to the machine's own)
 * @param when the situations in which it counts
 * @param side the side of the table from which it is taped, as the machine's gaps are; empty for a
 *     box
 * @param gap the taped gap, known or blank, if {@code side} is given (the reader drops rows with
 *     gap {@code none}); {@link Dimension#NONE} for a box
 * @param limits the closed box it fills; z from the table top, or from the spindle nose where it
 *     moves against the table along z. Unbounded along the direction of {@code side}
 * @param clearance its own required clearance; empty: that of the settings
 * @param tolerance its own tolerance; empty: that of the machine
 */
public record Guard(
    Column reading,
    String name,
    String kind,
    Axes carriedBy,
    When when,
    Optional<Side> side,
    Dimension gap,
    Box limits,
    OptionalLong clearance,
    OptionalLong tolerance) {
  public Guard {
    Require.named("guard", name);
    if (side.isEmpty() != gap.isNone()) {
      throw new IllegalArgumentException(
          "guard " + name + " needs both a side and a gap, or neither");
    }
    clearance.ifPresent(length -> Require.notNegative("clearance", length));
    tolerance.ifPresent(length -> Require.notNegative("tolerance", length));
  }

  /** A row of {@code guards}. */
  public Guard(
      String name,
      String kind,
      Axes carriedBy,
      When when,
      Optional<Side> side,
      Dimension gap,
      Box limits,
      OptionalLong clearance,
      OptionalLong tolerance) {
    this(Column.GUARD_GAP, name, kind, carriedBy, when, side, gap, limits, clearance, tolerance);
  }

  /**
   * The guard that a taped gap of a machine stands for: carried by the frame, it fills everything
   * beyond its face at every height. The door is open while loading; the others always count.
   *
   * @param gap known or blank
   */
  public static Guard taped(Side side, Dimension gap) {
    return new Guard(
        switch (side) {
          case FRONT -> Column.FRONT_GAP;
          case REAR -> Column.REAR_GAP;
          case LEFT -> Column.LEFT_GAP;
          case RIGHT -> Column.RIGHT_GAP;
        },
        tapedName(side),
        "",
        Axes.NONE,
        side == Side.FRONT ? When.CUTTING : When.ALWAYS,
        Optional.of(side),
        gap,
        new Box(Interval.ALL, Interval.ALL, Interval.ALL),
        OptionalLong.empty(),
        OptionalLong.empty());
  }

  /** The name of the guard behind a taped gap. */
  public static String tapedName(Side side) {
    return switch (side) {
      case FRONT -> "door";
      case REAR -> "rear cover";
      case LEFT -> "left guard";
      case RIGHT -> "right guard";
    };
  }

  /** Whether it is a row of {@code guards} rather than a taped gap of a machine's row. */
  public boolean isRow() {
    return reading == Column.GUARD_GAP;
  }

  /** Whether it has a z limit; without one it stands at every height. */
  public boolean hasHeight() {
    return Length.isBounded(limits.z().lo()) || Length.isBounded(limits.z().hi());
  }

  /** The same guard under another name. */
  public Guard withName(String name) {
    return new Guard(reading, name, kind, carriedBy, when, side, gap, limits, clearance, tolerance);
  }

  /** A copy with another taped gap. */
  public Guard withGap(Dimension gap) {
    return new Guard(reading, name, kind, carriedBy, when, side, gap, limits, clearance, tolerance);
  }

  /** A copy with other limits. */
  public Guard withLimits(Box limits) {
    return new Guard(reading, name, kind, carriedBy, when, side, gap, limits, clearance, tolerance);
  }

  /** A copy with another required clearance of its own. */
  public Guard withClearance(OptionalLong clearance) {
    return new Guard(reading, name, kind, carriedBy, when, side, gap, limits, clearance, tolerance);
  }
}
