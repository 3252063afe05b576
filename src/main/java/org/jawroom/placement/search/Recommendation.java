package org.jawroom.placement.search;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.jawroom.clearance.gap.Limit;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Orientation;
import org.jawroom.placement.bolting.Fastening;
import org.jawroom.placement.space.Play;

/**
 * The recommended placement and what reports show of it.
 *
 * @param x of the vise frame's origin in the table frame, {@code y} likewise
 * @param fastening the mount, and the thread of its bolts
 * @param slots the slot of each bolt or strap in the mount's order, 1 at the front (y slots: at the
 *     left)
 * @param openings the opening range it refers to: for {@code limited} the usable one as printed,
 *     else the full one
 * @param limit the witness of its margin; empty if nothing listed can be hit
 * @param settable whether the vise can be tapped square there; false if the margin is negative
 * @param handGap the least gap between the handle and any guard while loading, nothing taken off;
 *     empty without such a pair
 * @param reachShortfall largest protrusion of the work area from the spindle's reach, 0 if none
 * @param overhang largest overhang of the base over any table edge, 0 if none; empty for a vise of
 *     shape parts
 * @param play empty if the margin is negative
 * @param noseNotBelow least height of the nose above the table; empty without guards that move
 *     along z, if not even the highest nose is clear, or if a blank leaves it open
 */
public record Recommendation(
    Orientation handleTo,
    long x,
    long y,
    Fastening fastening,
    List<Integer> slots,
    Interval openings,
    Optional<Limit> limit,
    boolean settable,
    OptionalLong handGap,
    long reachShortfall,
    OptionalLong overhang,
    Optional<Play> play,
    OptionalLong noseNotBelow) {
  public Recommendation {
    slots = List.copyOf(slots);
  }

  /** The same place with another least height of the nose. */
  public Recommendation withNoseNotBelow(OptionalLong nose) {
    return new Recommendation(
        handleTo,
        x,
        y,
        fastening,
        slots,
        openings,
        limit,
        settable,
        handGap,
        reachShortfall,
        overhang,
        play,
        nose);
  }

  /** The name of the mount. */
  public String mount() {
    return fastening.name();
  }

  /** Diameter of its bolts; empty for strap clamps. */
  public OptionalLong thread() {
    return fastening.thread();
  }

  /** Its margin; empty if nothing listed can be hit. */
  public OptionalLong margin() {
    return limit.isPresent() ? OptionalLong.of(limit.get().margin()) : OptionalLong.empty();
  }
}
