package org.jawroom.placement.bolting;

import java.util.List;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Interval;
import org.jawroom.shop.Machine;

/**
 * Where the slots of a table lie.
 *
 * @param along the axis along which they run: X or Y
 * @param centres across the table from its middle, the first at the front (y slots: at the left)
 * @param reach how far bolts reach along them
 */
public record SlotLines(Axis along, List<Long> centres, Interval reach) {
  public SlotLines {
    centres = List.copyOf(centres);
  }

  /** Those of a machine whose pitch is known if it is needed. */
  public static SlotLines of(Machine machine) {
    return Slotted.of(machine).lines();
  }
}
