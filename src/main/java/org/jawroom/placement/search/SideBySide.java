package org.jawroom.placement.search;

import java.util.List;
import java.util.Optional;
import org.jawroom.geometry.Orientation;

/**
 * The largest number of vises of one kind on one table, in one turn and mount, on the same slots.
 *
 * @param positions of each along the slots, ascending: x of the vise frame's origin in the table
 *     frame (y slots: its y); empty if not even one fits
 * @param handleTo their turn; empty if not even one fits
 * @param mount the name of their mount, or empty
 */
public record SideBySide(List<Long> positions, Optional<Orientation> handleTo, String mount) {
  public SideBySide {
    positions = List.copyOf(positions);
  }

  public static final SideBySide NONE = new SideBySide(List.of(), Optional.empty(), "");

  public int count() {
    return positions.size();
  }
}
