package org.jawroom.advice;

import java.util.List;
import org.jawroom.geometry.Orientation;

/**
 * How large a vise a machine has room for, its bolts aside.
 *
 * <p>Asked of a vise that fills a rectangle, length along u by width along v, over everything it
 * sweeps at any opening: solid from the table top up, to the height that the owned vise which
 * reaches highest has while cutting, and once more as a handle from hand room over the table top
 * up, to the height that vise has while loading. The middle of the rectangle stands over the table
 * top; it may hang over the edge, but nothing of it below the top. Required clearance, hand room
 * and the machine's tolerances are kept; the vise's own tolerance is taken as 0, so it comes off
 * the figures. Blanks are left out: the figures are then at best.
 *
 * @param turns those allowed that have this room: a rectangle looks the same from front and rear
 * @param longest the greatest length at each width given, {@code widest} the greatest width at each
 *     length
 */
public record Room(List<Orientation> turns, List<RoomLimit> longest, List<RoomLimit> widest) {
  public Room {
    turns = List.copyOf(turns);
    longest = List.copyOf(longest);
    widest = List.copyOf(widest);
  }
}
