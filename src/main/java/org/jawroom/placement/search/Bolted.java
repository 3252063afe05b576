package org.jawroom.placement.search;

import java.util.List;
import org.jawroom.clearance.part.Part;
import org.jawroom.geometry.Orientation;
import org.jawroom.geometry.Rectangle;
import org.jawroom.placement.bolting.Fastening;

/**
 * One turn and one mount in which a vise can be fastened.
 *
 * @param places every position of the vise frame's origin at which the mount holds: at least one
 *     closed rectangle
 * @param settable those of them at which it leaves room to tap the vise square, whatever that could
 *     hit
 * @param parts of the vise, then its bolts or clamps
 */
public record Bolted(
    Orientation turn,
    Fastening fastening,
    List<Rectangle> places,
    List<Rectangle> settable,
    List<Part> parts) {
  public Bolted {
    places = List.copyOf(places);
    settable = List.copyOf(settable);
    parts = List.copyOf(parts);
  }
}
