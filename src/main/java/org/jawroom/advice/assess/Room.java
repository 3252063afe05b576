package org.jawroom.advice.assess;

import java.util.List;
import org.jawroom.geometry.Orientation;

/**
 * The largest vise that a machine has room for, bolts excluded.
 *
 * <p>The room is computed for a fictitious vise that fills a rectangle, length along u by width
 * along v, over everything it sweeps at any opening. It is solid from the table top up to the
 * height that the tallest owned vise reaches while cutting. While loading, a handle fills the same
 * rectangle from hand room above the table top up to the height that vise reaches then. The centre
 * of the rectangle lies over the table top; the rest may overhang the edge, but nothing reaches
 * below the top. Required clearance, hand room and the machine's tolerances are kept. The vise's
 * own tolerance is taken as 0 and has to be subtracted from the figures. Blanks are left out, so
 * the figures are then upper bounds.
 *
 * @param turns the allowed turns with this room; a rectangle is the same from front and rear
 * @param longest the greatest length at each given width, {@code widest} the greatest width at each
 *     given length
 */
public record Room(List<Orientation> turns, List<RoomLimit> longest, List<RoomLimit> widest) {
  public Room {
    turns = List.copyOf(turns);
    longest = List.copyOf(longest);
    widest = List.copyOf(widest);
  }
}
