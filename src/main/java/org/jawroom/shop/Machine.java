package org.jawroom.shop;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jawroom.geometry.Turn;

/**
 * A mill, as its row of {@code machines} and its rows of {@code guards} tell it.
 *
 * @param tableMoves the axes that carry the table
 * @param tableLength along x, {@code tableWidth} along y: the flat top
 * @param travelX between the ends the table really reaches, {@code travelY} likewise
 * @param spindleX where the spindle stands over the table at mid-travel, {@code spindleY} likewise
 * @param ledges what sticks out of the table's sides below the top
 * @param gaps from the table's edges to the nearest thing, taped at the end of travel that brings
 *     the two nearest; known (may be negative), none or blank
 * @param noseMin spindle nose to table top at its lowest, {@code noseMax} at its highest; known or
 *     blank
 * @param maxLoad what the table carries, kg; empty if blank
 * @param loadX where the spindle stands over the table while loading, within the reach, {@code
 *     loadY} likewise; defaults already filled in
 * @param turns where a handle can be worked on this machine
 * @param lookedFor which kinds of guard were looked for, as written
 * @param price of a candidate; empty if blank
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
    Sides<Dimension> gaps,
    Dimension noseMin,
    Dimension noseMax,
    Optional<BigDecimal> maxLoad,
    long loadX,
    long loadY,
    Set<Turn> turns,
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

  /** The same machine with other taped gaps. */
  public Machine withGaps(Sides<Dimension> gaps) {
    return with(name, gaps, turns, provenance, guards);
  }

  /** The same machine with other rows of guards. */
  public Machine withGuards(List<Guard> guards) {
    return with(name, gaps, turns, provenance, guards);
  }

  /** The same machine with other turns allowed. */
  public Machine withTurns(Set<Turn> turns) {
    return with(name, gaps, turns, provenance, guards);
  }

  /** The same machine, known better or worse. */
  public Machine withProvenance(Provenance provenance) {
    return with(name, gaps, turns, provenance, guards);
  }

  /** The same machine under another name. */
  public Machine withName(String name) {
    return with(name, gaps, turns, provenance, guards);
  }

  private Machine with(
      String name,
      Sides<Dimension> gaps,
      Set<Turn> turns,
      Provenance provenance,
      List<Guard> guards) {
    return new Machine(
        name,
        description,
        candidate,
        tableMoves,
        tableLength,
        tableWidth,
        travelX,
        travelY,
        spindleX,
        spindleY,
        slots,
        ledges,
        gaps,
        noseMin,
        noseMax,
        maxLoad,
        loadX,
        loadY,
        turns,
        lookedFor,
        provenance,
        price,
        guards);
  }
}
