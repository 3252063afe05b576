package org.jawroom.placement.search;

import java.util.List;
import org.jawroom.clearance.Part;
import org.jawroom.geometry.Orientation;
import org.jawroom.geometry.Rectangle;

/**
 * One turn and one mount in which a vise can be bolted.
 *
 * @param mountIndex index of the mount in input order
 * @param thread the bolts' diameter
 * @param places every position of the vise frame's origin at which the bolts hold: at least one
 *     closed rectangle
 * @param parts of the vise, then its bolts
 */
public record Bolted(
    Orientation turn,
    int mountIndex,
    String mount,
    long thread,
    List<Rectangle> places,
    List<Part> parts) {
  public Bolted {
    places = List.copyOf(places);
    parts = List.copyOf(parts);
  }
}
