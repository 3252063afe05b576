package org.jawroom.drawing.view;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;

/**
 * Diagonal hatching of a rectangle; drawn as lines, so that it stays vector graphics in every
 * format.
 */
public enum Hatch {
  WIDE(6, true, false),
  /** Leans the other way. */
  BACK(4.5, false, true),
  CROSS(3.5, true, true);

  private static final BasicStroke THIN = new BasicStroke(0.35f);
  private static final Color GREY = new Color(0x606060);

  private final double spacing;
  private final boolean forward;
  private final boolean back;

  Hatch(double spacing, boolean forward, boolean back) {
    this.spacing = spacing;
    this.forward = forward;
    this.back = back;
  }

  public void draw(Graphics2D pen, Rectangle2D over) {
    Path2D lines = new Path2D.Double();
    // On the lines x + y = a multiple of the spacing, so that hatchings of adjacent rectangles
    // match.
    double first = Math.ceil((over.getMinX() + over.getMinY()) / spacing) * spacing;
    for (double sum = first; sum < over.getMaxX() + over.getMaxY(); sum += spacing) {
      double left = Math.max(over.getMinX(), sum - over.getMaxY());
      double right = Math.min(over.getMaxX(), sum - over.getMinY());
      if (forward) {
        lines.append(new Line2D.Double(left, sum - left, right, sum - right), false);
      }
      if (back) {
        double mirror = over.getMinX() + over.getMaxX();
        lines.append(
            new Line2D.Double(mirror - left, sum - left, mirror - right, sum - right), false);
      }
    }
    pen.setStroke(THIN);
    pen.setColor(GREY);
    pen.draw(lines);
  }
}
