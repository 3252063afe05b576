package org.jawroom.drawing.paint;

import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;

/** The arrows of a dimension line. */
final class Arrows {
  static final double TAIL = 14;
  private static final double HEAD = 4.5;

  private Arrows() {}

  /** Draws them between two points if there is space, else toward them from outside. */
  static void between(Graphics2D pen, Point2D from, Point2D to) {
    double length = from.distance(to);
    double dx = length == 0 ? 1 : (to.getX() - from.getX()) / length;
    double dy = length == 0 ? 0 : (to.getY() - from.getY()) / length;
    between(pen, from, to, dx, dy);
  }

  /** (dx, dy): the direction from the first to the second, of length 1. */
  static void between(Graphics2D pen, Point2D from, Point2D to, double dx, double dy) {
    if (from.distance(to) > 3 * HEAD) {
      pen.draw(new Line2D.Double(from, to));
      head(pen, from, dx, dy);
      head(pen, to, -dx, -dy);
    } else {
      pen.draw(
          new Line2D.Double(
              from.getX() - dx * TAIL,
              from.getY() - dy * TAIL,
              to.getX() + dx * TAIL,
              to.getY() + dy * TAIL));
      head(pen, from, -dx, -dy);
      head(pen, to, dx, dy);
    }
  }

  /** A filled arrowhead with its tip at {@code tip} and its base toward (dx, dy). */
  private static void head(Graphics2D pen, Point2D tip, double dx, double dy) {
    Path2D head = new Path2D.Double();
    head.moveTo(tip.getX(), tip.getY());
    head.lineTo(tip.getX() + dx * HEAD - dy * HEAD / 3, tip.getY() + dy * HEAD + dx * HEAD / 3);
    head.lineTo(tip.getX() + dx * HEAD + dy * HEAD / 3, tip.getY() + dy * HEAD - dx * HEAD / 3);
    head.closePath();
    pen.fill(head);
  }
}
