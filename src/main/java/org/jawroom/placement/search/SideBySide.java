package org.jawroom.placement.search;

import java.util.List;
import java.util.Optional;
import org.jawroom.geometry.Orientation;
import org.jawroom.placement.space.Place;

/**
 * The largest number of vises of one kind on one table, in one turn and mount, on the same slots.
 *
 * @param positions of each along the slots, ascending: x of the vise frame's origin in the table
 *     frame (y slots: its y); empty if not even one fits
 * @param places of the vise frame's origin, one for each position: along the slots that position,
 *     across them one with margin ≥ 0
 * @param handleTo their turn; empty if not even one fits
 * @param mount the name of their mount, or empty
 * @param region the index of the region they stand in, of those searched; −1 if not even one fits
 */
public record SideBySide(
    List<Long> positions,
    List<Place> places,
    Optional<Orientation> handleTo,
    String mount,
    int region) {
  public SideBySide {
    positions = List.copyOf(positions);
    places = List.copyOf(places);
  }

  public static final SideBySide NONE =
      new SideBySide(List.of(), List.of(), Optional.empty(), "", -1);

  public int count() {
    return positions.size();
  }

  /** The places of only so many of them, the middle ones; all if there are no more. */
  public List<Place> middle(int wanted) {
    int left = Math.max(0, places.size() - wanted);
    return places.subList(left / 2, places.size() - (left - left / 2));
  }
}
