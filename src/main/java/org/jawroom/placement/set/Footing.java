package org.jawroom.placement.set;

import java.util.Optional;
import org.jawroom.clearance.part.Part;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Interval;
import org.jawroom.placement.bolting.Region;
import org.jawroom.placement.space.FreeSpace;

/**
 * One turn and mount of a kind of vise, with what its neighbours must keep away from.
 *
 * @param kind the index of the vise in the set
 * @param space its free positions over its full opening, without hand room
 * @param all what its parts cover along the slots with its origin at 0, both situations
 * @param body the same without the handle: two handles may overlap, since one serves all vises
 */
record Footing(int kind, Region region, FreeSpace space, Interval all, Interval body) {

  /** Empty if nothing but a handle is known of it, which only happens with readings at best. */
  static Optional<Footing> of(int kind, Region region, Interval openings, Axis along) {
    Interval all = null;
    Interval body = null;
    for (Part part : region.parts()) {
      Interval covered = part.over(openings, region.turn()).along(along);
      all = all == null ? covered : all.hull(covered);
      if (!part.handle()) {
        body = body == null ? covered : body.hull(covered);
      }
    }
    return body == null
        ? Optional.empty()
        : Optional.of(new Footing(kind, region, region.space(openings), all, body));
  }

  /**
   * How far the origin of the next vise to the right must stand from this one's for the two just to
   * touch.
   */
  long touching(Footing right) {
    return Math.max(all.hi() - right.body.lo(), body.hi() - right.all.lo());
  }
}
