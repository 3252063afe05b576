package org.jawroom.drawing.paint;

import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.jawroom.drawing.view.View;
import org.jawroom.drawing.view.View.Flat;
import org.jawroom.geometry.Interval;
import org.jawroom.placement.space.Place;

/** Maps half-nanometres of a view to points of the sheet, clipped at the frame. */
public record ViewProjection(View view, Flat extent, Rectangle2D frame, double scale) {

  double right(long length) {
    return frame.getMinX() + (clamp(extent.right(), length) - extent.right().lo()) * scale;
  }

  double up(long length) {
    return frame.getMaxY() - (clamp(extent.up(), length) - extent.up().lo()) * scale;
  }

  /** Whether any of it is visible. */
  boolean sees(Flat flat) {
    return flat.right().meets(extent.right()) && flat.up().meets(extent.up());
  }

  /** Whether it covers the whole frame. */
  boolean fills(Flat flat) {
    return flat.right().hull(extent.right()).equals(flat.right())
        && flat.up().hull(extent.up()).equals(flat.up());
  }

  /** A polygon of a plan. */
  Path2D polygon(List<Place> corners) {
    Path2D path = new Path2D.Double();
    for (Place corner : corners) {
      if (path.getCurrentPoint() == null) {
        path.moveTo(right(corner.x()), up(corner.y()));
      } else {
        path.lineTo(right(corner.x()), up(corner.y()));
      }
    }
    path.closePath();
    return path;
  }

  Rectangle2D rectangle(Flat flat) {
    double left = right(flat.right().lo());
    double top = up(flat.up().hi());
    return new Rectangle2D.Double(
        left, top, right(flat.right().hi()) - left, up(flat.up().lo()) - top);
  }

  private static long clamp(Interval seen, long length) {
    return Math.max(seen.lo(), Math.min(seen.hi(), length));
  }
}
