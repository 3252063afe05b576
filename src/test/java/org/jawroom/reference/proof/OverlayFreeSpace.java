package org.jawroom.reference.proof;

import java.util.ArrayList;
import java.util.List;
import org.jawroom.reference.space.Rect;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.UnaryUnionNG;

/**
 * Free space by polygon overlay (JTS): the region as polygons less the union of the forbidden
 * rectangles. Half-nanometres are whole numbers far below 2^53 and all edges are axis-parallel, so
 * no coordinate is rounded. Polygons do not represent free lines and points: an area of 0 may still
 * contain positions of exact contact.
 */
public final class OverlayFreeSpace {
  private static final PrecisionModel WHOLE = new PrecisionModel(1);
  private static final GeometryFactory FACTORY = new GeometryFactory(WHOLE);

  private OverlayFreeSpace() {}

  /** The free polygons; rectangles must be bounded or are clipped to the region's neighbourhood. */
  public static Geometry of(List<Rect> region, List<Rect> forbidden) {
    Geometry whole =
        union(region.stream().filter(r -> r.xLo() < r.xHi() && r.yLo() < r.yHi()).toList());
    Envelope around = whole.getEnvelopeInternal();
    around.expandBy(10);
    List<Rect> bounded = new ArrayList<>();
    for (Rect rect : forbidden) {
      Rect cut =
          new Rect(
              Math.max(rect.xLo(), (long) around.getMinX()),
              Math.min(rect.xHi(), (long) around.getMaxX()),
              Math.max(rect.yLo(), (long) around.getMinY()),
              Math.min(rect.yHi(), (long) around.getMaxY()));
      if (cut.xLo() < cut.xHi() && cut.yLo() < cut.yHi()) {
        bounded.add(cut);
      }
    }
    return bounded.isEmpty() || whole.isEmpty()
        ? whole
        : OverlayNG.overlay(whole, union(bounded), OverlayNG.DIFFERENCE, WHOLE);
  }

  /** Its area in square half-nanometres, to double precision. */
  public static double area(List<Rect> region, List<Rect> forbidden) {
    return of(region, forbidden).getArea();
  }

  private static Geometry union(List<Rect> rects) {
    List<Geometry> polygons = new ArrayList<>();
    for (Rect rect : rects) {
      polygons.add(
          FACTORY.toGeometry(new Envelope(rect.xLo(), rect.xHi(), rect.yLo(), rect.yHi())));
    }
    if (polygons.isEmpty()) {
      return FACTORY.createPolygon();
    }
    return UnaryUnionNG.union(polygons, FACTORY, WHOLE);
  }
}
