package org.jawroom.placement.search;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.jawroom.clearance.Limit;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Orientation;
import org.jawroom.placement.space.Play;

/**
 * The recommended placement and what is told of it.
 *
 * @param x of the vise frame's origin in the table frame, {@code y} likewise
 * @param mount the name of the mount
 * @param slots the slot of each bolt in the mount's order, 1 at the front (y slots: at the left)
 * @param openings the opening range it speaks of: for {@code limited} the usable one as printed,
 *     else the full one
 * @param limit what limits it; empty where nothing listed can be hit
 * @param reachShortfall the most the work area sticks out of the spindle's reach, 0 if it does not
 * @param overhang the most the base hangs over any table edge, 0 if it does not; empty for a vise
 *     of shape parts
 * @param play empty where the margin is negative
 * @param noseNotBelow the least height of the nose above the table; empty without guards that move
 *     along z, where not even the nose at its highest is clear, or where a blank leaves it open
 */
public record Recommendation(
    Orientation handleTo,
    long x,
    long y,
    String mount,
    List<Integer> slots,
    Interval openings,
    Optional<Limit> limit,
    long reachShortfall,
    OptionalLong overhang,
    Optional<Play> play,
    OptionalLong noseNotBelow) {
  public Recommendation {
    slots = List.copyOf(slots);
  }
}
