package org.jawroom.placement.bolting.slot;

import java.util.List;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Interval;
import org.jawroom.shop.machine.Machine;

/**
 * The slots of a table. Lengths in half-nanometres, in the table frame.
 *
 * @param along the axis along which they run: X or Y
 * @param centres centre lines across the table from its middle, the first at the front (y slots: at
 *     the left)
 * @param reach closed interval along the slots that bolts can reach
 */
public record SlotLines(Axis along, List<Long> centres, Interval reach) {
  public SlotLines {
    centres = List.copyOf(centres);
  }

  /** The slots of a machine, whose pitch must be known if it is needed. */
  public static SlotLines of(Machine machine) {
    return Slotted.of(machine).lines();
  }
}
