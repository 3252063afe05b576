package org.jawroom.shop.machine;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Orientation;
import org.jawroom.geometry.Rectangle;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.value.Provenance;
import org.jawroom.shop.value.Require;

/**
 * A mill: its row of {@code machines} and its rows of {@code guards}. Lengths in half-nanometres,
 * in the table frame.
 *
 * @param tableMoves the axes that carry the table
 * @param tableLength along x, {@code tableWidth} along y: the flat top
 * @param travelX between the ends that the table really reaches, {@code travelY} likewise
 * @param spindleX spindle position over the table at mid-travel, {@code spindleY} likewise
 * @param ledges what protrudes from the table's sides below the top
 * @param noseMin lowest height of the spindle nose above the table top, {@code noseMax} the
 *     highest; known or blank
 * @param maxLoad load capacity of the table, kg; empty if blank
 * @param loadX spindle position over the table while loading, within the reach, {@code loadY}
 *     likewise; defaults already applied
 * @param turns the turns in which a handle can be worked on this machine
 * @param lookedFor kinds of guard that were looked for, as written
 * @param price of a candidate; empty if blank
 * @param guards in order of precedence among equal margins: first those of the taped gaps front,
 *     rear, left, right (a gap {@code none} has no guard), then the rows of {@code guards}
 */
public record Machine(
    String name,
    String description,
    boolean candidate,
    Axes tableMoves,
    long tableLength,
    long tableWidth,
    long travelX,
    long travelY,
    long spindleX,
    long spindleY,
    Slots slots,
    Sides<Long> ledges,
    Dimension noseMin,
    Dimension noseMax,
    Optional<BigDecimal> maxLoad,
    long loadX,
    long loadY,
    Set<Orientation> turns,
    List<String> lookedFor,
    Provenance provenance,
    Optional<BigDecimal> price,
    List<Guard> guards) {
  public Machine {
    Require.named("machine", name);
    turns = Set.copyOf(turns);
    lookedFor = List.copyOf(lookedFor);
    guards = List.copyOf(guards);
    Require.notNegative("table length", tableLength);
    Require.notNegative("table width", tableWidth);
    Require.notNegative("travel", Math.min(travelX, travelY));
    for (Side side : Side.values()) {
      Require.notNegative(side.word() + " ledge", ledges.get(side));
    }
    Require.price(price);
    if (!isInOrder(guards)) {
      throw new IllegalArgumentException("guards out of order: " + guards);
    }
    if (noseMin.isKnown() && noseMax.isKnown() && noseMin.length() > noseMax.length()) {
      throw new IllegalArgumentException("nose_min above nose_max");
    }
    if (Math.abs(loadX - spindleX) > travelX / 2 || Math.abs(loadY - spindleY) > travelY / 2) {
      throw new IllegalArgumentException("load position outside the reach");
    }
  }

  /** Half the y travel: the spindle reaches {@link #spindleY} ± this, ends included. */
  public long reachY() {
    return travelY / 2;
  }

  /** Half the x travel: the spindle reaches {@link #spindleX} ± this, ends included. */
  public long reachX() {
    return travelX / 2;
  }

  /** The flat top, seen from above; ledges not counted. */
  public Rectangle top() {
    return new Rectangle(Interval.around(0, tableLength / 2), Interval.around(0, tableWidth / 2));
  }

  /** Starts a machine of that name. */
  public static MachineBuilder builder(String name) {
    return new MachineBuilder(name);
  }

  /** A builder preset with this machine. */
  public MachineBuilder toBuilder() {
    return new MachineBuilder(this);
  }

  private static boolean isInOrder(List<Guard> guards) {
    for (int i = 1; i < guards.size(); i++) {
      int step = guards.get(i).reading().compareTo(guards.get(i - 1).reading());
      if (step < 0 || step == 0 && !guards.get(i).isRow()) {
        return false;
      }
    }
    return true;
  }

  /** The rows of {@code guards}, in input order. */
  public List<Guard> guardRows() {
    return guards.stream().filter(Guard::isRow).toList();
  }

  /** The taped gap on a side: known, blank, or none. */
  public Dimension gap(Side side) {
    return guards.stream()
        .filter(guard -> !guard.isRow() && guard.side().get() == side)
        .findFirst()
        .map(Guard::gap)
        .orElse(Dimension.NONE);
  }

  /**
   * The axes along which a guard moves against the table: those that carry exactly one of the two.
   * Z counts only if the guard has a z limit, since a guard without one fills every height.
   */
  public Axes movesAgainstTable(Guard guard) {
    Axes carried = guard.carriedBy();
    return new Axes(
        carried.x() != tableMoves.x(),
        carried.y() != tableMoves.y(),
        carried.z() != tableMoves.z() && guard.hasHeight());
  }

  /** A copy with another taped gap on one side. */
  public Machine withGap(Side side, Dimension gap) {
    return toBuilder().gap(side, gap).build();
  }

  /** A copy with other rows of {@code guards} and the same taped gaps. */
  public Machine withGuardRows(List<Guard> rows) {
    return toBuilder().guardRows(rows).build();
  }

  /** A copy with {@code change} applied to every guard. */
  public Machine withEachGuard(UnaryOperator<Guard> change) {
    return toBuilder().guards(guards.stream().map(change).toList()).build();
  }

  /** A copy without one guard. */
  public Machine without(Guard guard) {
    return toBuilder().guards(guards.stream().filter(one -> !one.equals(guard)).toList()).build();
  }

  /** A copy with one guard replaced. */
  public Machine withInstead(Guard guard, Guard instead) {
    return withEachGuard(one -> one.equals(guard) ? instead : one);
  }

  /** A copy with other turns allowed. */
  public Machine withTurns(Set<Orientation> turns) {
    return toBuilder().turns(turns).build();
  }

  /** A copy with another provenance. */
  public Machine withProvenance(Provenance provenance) {
    return toBuilder().provenance(provenance).build();
  }
}
