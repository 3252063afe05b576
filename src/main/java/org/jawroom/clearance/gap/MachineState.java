package org.jawroom.clearance.gap;

import org.jawroom.clearance.Situation;
import org.jawroom.shop.machine.Machine;

/**
 * One moment at a machine.
 *
 * @param spindleX spindle position over the table, {@code spindleY} likewise
 * @param opening distance between the jaw faces
 */
public record MachineState(Situation situation, long spindleX, long spindleY, long opening) {

  public static MachineState cutting(long spindleX, long spindleY, long opening) {
    return new MachineState(Situation.CUTTING, spindleX, spindleY, opening);
  }

  /** While loading, the axes stand at the load position. */
  public static MachineState loading(Machine machine, long opening) {
    return new MachineState(Situation.LOADING, machine.loadX(), machine.loadY(), opening);
  }
}
