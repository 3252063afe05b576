package org.jawroom.clearance;

import org.jawroom.shop.Machine;

/**
 * One moment at a machine.
 *
 * @param spindleX where the spindle stands over the table, {@code spindleY} likewise
 * @param opening between the jaw faces
 */
public record Moment(Situation situation, long spindleX, long spindleY, long opening) {

  public static Moment cutting(long spindleX, long spindleY, long opening) {
    return new Moment(Situation.CUTTING, spindleX, spindleY, opening);
  }

  /** While loading the axes stand at the load position. */
  public static Moment loading(Machine machine, long opening) {
    return new Moment(Situation.LOADING, machine.loadX(), machine.loadY(), opening);
  }
}
