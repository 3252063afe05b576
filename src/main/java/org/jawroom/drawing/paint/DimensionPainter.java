package org.jawroom.drawing.paint;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.jawroom.drawing.text.Lettering;
import org.jawroom.drawing.text.Typeface;
import org.jawroom.drawing.view.Caption;
import org.jawroom.drawing.view.Measure;
import org.jawroom.drawing.view.View;
import org.jfree.svg.SVGHints;

/**
 * Draws the limiting clearance where it occurs: the two faces, an arrow to each, its value and its
 * name.
 */
final class DimensionPainter {
  private static final BasicStroke FACE = new BasicStroke(1.6f);
  private static final BasicStroke LINE = new BasicStroke(0.8f);
  private static final double TAIL = Arrows.TAIL;
  private static final double FACE_HALF = 9;
  private static final int RINGS = 10;
  private static final double RING = 14;

  private final Graphics2D pen;
  private final ViewProjection projection;
  private final NameLabels names;

  DimensionPainter(Graphics2D pen, ViewProjection projection, NameLabels names) {
    this.pen = pen;
    this.projection = projection;
    this.names = names;
  }

  void paint(Measure measure, Caption caption) {
    boolean level = measure.axis() == projection.view().right();
    Point2D from;
    Point2D to;
    if (level) {
      double y = projection.up(measure.beside(projection.view().up()));
      from = new Point2D.Double(projection.right(measure.from()), y);
      to = new Point2D.Double(projection.right(measure.to()), y);
    } else {
      double x = projection.right(measure.beside(projection.view().right()));
      // The sheet's y axis points down, so the lower face has the greater y.
      from = new Point2D.Double(x, projection.up(measure.from()));
      to = new Point2D.Double(x, projection.up(measure.to()));
    }
    String id = projection.view().name().toLowerCase(java.util.Locale.ROOT) + "-dimension";
    pen.setRenderingHint(SVGHints.KEY_BEGIN_GROUP, id);
    pen.setColor(Color.BLACK);
    face(from, level);
    face(to, level);
    pen.setStroke(LINE);
    Arrows.between(pen, from, to, level ? 1 : 0, level ? 0 : -1);
    pen.setRenderingHint(SVGHints.KEY_END_GROUP, id);
    label(from, to, caption);
  }

  private void face(Point2D at, boolean level) {
    pen.setStroke(FACE);
    pen.draw(
        level
            ? new Line2D.Double(at.getX(), at.getY() - FACE_HALF, at.getX(), at.getY() + FACE_HALF)
            : new Line2D.Double(
                at.getX() - FACE_HALF, at.getY(), at.getX() + FACE_HALF, at.getY()));
  }

  /** Draws the value and its name on that side of the arrows where they stay within the frame. */
  private void label(Point2D from, Point2D to, Caption caption) {
    double size = Lettering.PLAIN;
    double room = projection.frame().getWidth() - 8;
    List<String> lines = new java.util.ArrayList<>();
    lines.add(caption.measure());
    if (projection.view() == View.PLAN || !View.PLAN.shows(axisOf(from, to))) {
      lines.addAll(
          Lettering.wrapped(
              Typeface.PLAIN, Lettering.SMALL, caption.measureName(), Math.min(130, room)));
    }
    double width = 0;
    for (int i = 0; i < lines.size(); i++) {
      width =
          Math.max(
              width,
              i == 0
                  ? Lettering.width(Typeface.BOLD, size, lines.get(0))
                  : Lettering.width(Typeface.PLAIN, Lettering.SMALL, lines.get(i)));
    }
    double height = size + (lines.size() - 1) * (Lettering.SMALL + 1) + 3;
    double middleX = (from.getX() + to.getX()) / 2;
    double middleY = (from.getY() + to.getY()) / 2;
    Rectangle2D box = place(middleX, middleY, width + 4, height);
    double left = box.getMinX() + 2;
    double top = box.getMinY();
    pen.setColor(Color.BLACK);
    pen.setStroke(LINE);
    double toX = Math.max(box.getMinX(), Math.min(middleX, box.getMaxX()));
    double toY = Math.max(box.getMinY(), Math.min(middleY, box.getMaxY()));
    pen.draw(new Line2D.Double(middleX, middleY, toX, toY));
    pen.setColor(Color.WHITE);
    pen.fill(box);
    pen.setColor(Color.BLACK);
    pen.draw(box);
    double line = top + size;
    Lettering.write(pen, Typeface.BOLD, size, lines.get(0), left, line);
    for (String more : lines.subList(1, lines.size())) {
      line += Lettering.SMALL + 1;
      Lettering.write(pen, Typeface.PLAIN, Lettering.SMALL, more, left, line);
    }
    names.keepFree(box);
    names.keepFree(new Rectangle2D.Double(middleX - TAIL, middleY - TAIL, 2 * TAIL, 2 * TAIL));
  }

  /** Of many places around a point the nearest that covers least of what must stay free. */
  private Rectangle2D place(double x, double y, double width, double height) {
    Rectangle2D frame = projection.frame();
    Rectangle2D best = null;
    double covered = Double.POSITIVE_INFINITY;
    for (int ring = 0; ring < RINGS; ring++) {
      double aside = TAIL + 2 + ring * RING;
      double off = FACE_HALF + 5 + ring * RING;
      double[][] corners = {
        {x + aside, y - off - height},
        {x - aside - width, y - off - height},
        {x + aside, y + off},
        {x - aside - width, y + off},
        {x + aside, y - height / 2},
        {x - aside - width, y - height / 2},
        {x - width / 2, y - off - height - TAIL},
        {x - width / 2, y + off + TAIL},
      };
      for (double[] corner : corners) {
        double left =
            Math.max(frame.getMinX() + 1, Math.min(corner[0], frame.getMaxX() - width - 1));
        double top =
            Math.max(frame.getMinY() + 2, Math.min(corner[1], frame.getMaxY() - height - 2));
        Rectangle2D box = new Rectangle2D.Double(left, top, width, height);
        double over = names.covered(box);
        if (over < covered) {
          best = box;
          covered = over;
        }
      }
    }
    return best;
  }

  private org.jawroom.geometry.Axis axisOf(Point2D from, Point2D to) {
    return from.getY() == to.getY() ? projection.view().right() : projection.view().up();
  }
}
