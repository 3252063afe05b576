package org.jawroom.drawing.paint;

import java.awt.geom.Rectangle2D;
import org.jawroom.drawing.view.View;
import org.jawroom.drawing.view.View.Flat;
import org.jawroom.geometry.Interval;

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
