package org.jawroom.placement.search;

import java.util.List;
import org.jawroom.clearance.Part;
import org.jawroom.geometry.Orientation;
import org.jawroom.geometry.Rectangle;

/**
 * One turn and one mount in which a vise can be bolted.
 *
 * @param mountIndex the mount's place in input order
 * @param thread the bolts' diameter
 * @param places every place of the vise frame's origin at which the bolts hold: closed rectangles,
 *     one at least
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
