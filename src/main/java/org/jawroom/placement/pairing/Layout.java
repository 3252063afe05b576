package org.jawroom.placement.pairing;

import java.util.List;
import java.util.Optional;
import org.jawroom.clearance.guard.SweptGuard;
import org.jawroom.clearance.part.Part;
import org.jawroom.geometry.Box;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Rectangle;
import org.jawroom.placement.space.Place;

/**
 * The geometry of a placement in the table frame: everything that a drawing shows on and around the
 * table.
 *
 * @param openings the opening range it refers to
 * @param parts of the vise, bolts excluded, in model order, one per situation
 * @param guards the swept guards in model order, the table last
 * @param guardsAtBest those of them that are there with open readings at best, where they then are
 * @param slotCentres the centre line of each slot, from the table's middle across the slots
 * @param bolts the position of each bolt of the mount, in its order
 * @param thread diameter of the bolts
 * @param reach of the spindle over the table
 * @param workArea between the jaws at their widest opening
 */
public record Layout(
    Interval openings,
    List<PlacedPart> parts,
    List<SweptGuard> guards,
    List<SweptGuard> guardsAtBest,
    List<Long> slotCentres,
    List<Place> bolts,
    long thread,
    Rectangle reach,
    Rectangle workArea) {

  /**
   * A placed part, in the situation in which it counts.
   *
   * @param closed at the least opening of the range, {@code open} at the greatest
   * @param swept over the whole range: the smallest box that contains both
   * @param surelyClosed what it covers at the least opening whatever its open readings are, the
   *     same as {@code closed} if it has none; empty if that is nothing
   * @param surelyOpen likewise at the greatest
   * @param outline the corners seen from above, in order, of the turned part that it is a strip of;
   *     empty for any other
   */
  public record PlacedPart(
      Part part,
      Box closed,
      Box open,
      Box swept,
      Optional<Box> surelyClosed,
      Optional<Box> surelyOpen,
      List<Place> outline) {
    public PlacedPart {
      outline = List.copyOf(outline);
    }
  }

  public Layout {
    parts = List.copyOf(parts);
    guards = List.copyOf(guards);
    guardsAtBest = List.copyOf(guardsAtBest);
    slotCentres = List.copyOf(slotCentres);
    bolts = List.copyOf(bolts);
  }
}
