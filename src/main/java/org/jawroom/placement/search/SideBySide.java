package org.jawroom.placement.search;

import java.util.List;
import java.util.Optional;
import org.jawroom.geometry.Orientation;

/**
 * The most vises of one kind that stand on one table, of one turn and mount, on the same slots.
 *
 * @param positions of each along the slots, rising: x of the vise frame's origin in the table frame
 *     (slots along y: its y); empty where not one fits
 * @param handleTo their turn; empty where not one fits
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
