package org.jawroom.shop;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Orientation;
import org.jawroom.geometry.Rectangle;

/**
 * A mill, as its row of {@code machines} and its rows of {@code guards} tell it.
 *
 * @param tableMoves the axes that carry the table
 * @param tableLength along x, {@code tableWidth} along y: the flat top
 * @param travelX between the ends the table really reaches, {@code travelY} likewise
 * @param spindleX where the spindle stands over the table at mid-travel, {@code spindleY} likewise
 * @param ledges what sticks out of the table's sides below the top
 * @param noseMin spindle nose to table top at its lowest, {@code noseMax} at its highest; known or
 *     blank
 * @param maxLoad what the table carries, kg; empty if blank
 * @param loadX where the spindle stands over the table while loading, within the reach, {@code
 *     loadY} likewise; defaults already filled in
 * @param turns where a handle can be worked on this machine
 * @param lookedFor which kinds of guard were looked for, as written
 * @param price of a candidate; empty if blank
 * @param guards in the order in which equal margins are told apart: those behind the taped gaps,
 *     front, rear, left, right, a gap {@code none} left out; then the rows of {@code guards}
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
    Check.named("machine", name);
    turns = Set.copyOf(turns);
    lookedFor = List.copyOf(lookedFor);
    guards = List.copyOf(guards);
    Check.notNegative("table length", tableLength);
    Check.notNegative("table width", tableWidth);
    Check.notNegative("travel", Math.min(travelX, travelY));
    for (Side side : Side.values()) {
      Check.notNegative(side.word() + " ledge", ledges.get(side));
    }
    Check.price(price);
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

  /** The spindle's reach along y goes this far to either side of {@link #spindleY}. */
  public long reachY() {
    return travelY / 2;
  }

  /** The spindle's reach along x goes this far to either side of {@link #spindleX}. */
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

  /** Starts a machine that is the same but for what is set. */
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

  /** The guards that are rows of {@code guards}, in input order. */
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
   * The axes along which a guard of this machine moves against the table: those that carry exactly
   * one of the two. Along z only if the guard has a z limit: one without stands at every height.
   */
  public Axes movesAgainstTable(Guard guard) {
    Axes carried = guard.carriedBy();
    return new Axes(
        carried.x() != tableMoves.x(),
        carried.y() != tableMoves.y(),
        carried.z() != tableMoves.z() && guard.hasHeight());
  }

  /** The same machine with another taped gap on a side. */
  public Machine withGap(Side side, Dimension gap) {
    return toBuilder().gap(side, gap).build();
  }

  /** The same machine with other rows of {@code guards}, its taped gaps as they are. */
  public Machine withGuardRows(List<Guard> rows) {
    return toBuilder().guardRows(rows).build();
  }

  /** The same machine, each of its guards changed. */
  public Machine withEachGuard(UnaryOperator<Guard> change) {
    return toBuilder().guards(guards.stream().map(change).toList()).build();
  }

  /** The same machine without one of its guards. */
  public Machine without(Guard guard) {
    return toBuilder().guards(guards.stream().filter(one -> !one.equals(guard)).toList()).build();
  }

  /** The same machine with another in the place of one of its guards. */
  public Machine withInstead(Guard guard, Guard instead) {
    return withEachGuard(one -> one.equals(guard) ? instead : one);
  }

  /** The same machine with other turns allowed. */
  public Machine withTurns(Set<Orientation> turns) {
    return toBuilder().turns(turns).build();
  }

  /** The same machine, known better or worse. */
  public Machine withProvenance(Provenance provenance) {
    return toBuilder().provenance(provenance).build();
  }
}
