package org.jawroom.shop.machine;

import java.util.List;
import java.util.OptionalLong;
import org.jawroom.geometry.Axis;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.value.Require;

/**
 * The T-slots of a table.
 *
 * @param direction the axis along which they run: X or Y
 * @param count 0 or more
 * @param width of the slot's throat, which decides the bolt; may be blank
 * @param pitch centre line to centre line; may be blank (and is not needed for a single slot)
 * @param first from the table's front edge (y slots: left edge) to the first centre line; empty:
 *     the slots are centred
 * @param positions from the same edge to every centre line, ascending; empty: count, pitch and
 *     first give the positions
 * @param length extent along the slots that bolts can reach; empty: the whole table
 */
public record Slots(
    Axis direction,
    int count,
    Dimension width,
    Dimension pitch,
    OptionalLong first,
    List<Long> positions,
    OptionalLong length) {
  public Slots {
    positions = List.copyOf(positions);
    if (direction == Axis.Z) {
      throw new IllegalArgumentException("slots run along x or y");
    }
    Require.notNegative("slot count", count);
    Require.notNegative("slot width", width);
    Require.notNegative("slot pitch", pitch);
    if (!positions.isEmpty() && positions.size() != count) {
      throw new IllegalArgumentException(positions.size() + " positions for " + count + " slots");
    }
  }

  /** Slots centred on the table that extend over its whole length. */
  public static Slots centred(Axis direction, int count, Dimension width, Dimension pitch) {
    return new Slots(
        direction, count, width, pitch, OptionalLong.empty(), List.of(), OptionalLong.empty());
  }

  /** Whether the places of the slots depend on the pitch. */
  public boolean needsPitch() {
    return positions.isEmpty() && count > 1;
  }

  /** Whether it is known where the slots lie: false if a blank pitch leaves it open. */
  public boolean placesKnown() {
    return !needsPitch() || !pitch.isBlank();
  }
}
