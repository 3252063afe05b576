package org.jawroom.placement.pairing;

import java.util.List;
import org.jawroom.clearance.Part;
import org.jawroom.clearance.SweptGuard;
import org.jawroom.geometry.Box;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Rectangle;
import org.jawroom.placement.space.Place;

/**
 * Everything that stands on and around a table with the vise at one place, in the table frame: what
 * a picture of it shows.
 *
 * @param openings the opening range spoken of
 * @param parts of the vise, its bolts aside, in the order of the model, one for each situation
 * @param guards what they sweep, in the order of the model; the table last
 * @param slotCentres the centre line of each slot, from the table's middle across the slots
 * @param bolts where each bolt of the mount stands, in its order
 * @param thread diameter of the bolts
 * @param reach of the spindle over the table
 * @param workArea between the jaws at their widest
 */
public record Layout(
    Interval openings,
    List<PlacedPart> parts,
    List<SweptGuard> guards,
    List<Long> slotCentres,
    List<Place> bolts,
    long thread,
    Rectangle reach,
    Rectangle workArea) {

  /**
   * A part where it stands, in the situation in which it counts.
   *
   * @param closed at the least opening of the range, {@code open} at the greatest
   * @param swept over the whole range: the smallest box that holds both
   */
  public record PlacedPart(Part part, Box closed, Box open, Box swept) {}

  public Layout {
    parts = List.copyOf(parts);
    guards = List.copyOf(guards);
    slotCentres = List.copyOf(slotCentres);
    bolts = List.copyOf(bolts);
  }
}
