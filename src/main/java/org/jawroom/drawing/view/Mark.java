package org.jawroom.drawing.view;

import java.util.List;
import org.jawroom.drawing.view.View.Flat;
import org.jawroom.placement.space.Place;

/**
 * One rectangle of a view, or a polygon in it.
 *
 * @param id an identifier of our own letters and digits: it names the group in an SVG
 * @param name the label; empty if none is drawn
 * @param outline the corners of the polygon, of a plan alone; empty for a rectangle
 */
public record Mark(String id, String name, Ink ink, Flat flat, List<Place> outline) {
  public Mark {
    outline = List.copyOf(outline);
  }

  /** A rectangle. */
  Mark(String id, String name, Ink ink, Flat flat) {
    this(id, name, ink, flat, List.of());
  }
}
