package org.jawroom.drawing;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.math.BigDecimal;
import org.jawroom.drawing.text.Lettering;
import org.jawroom.drawing.text.Typeface;

/**
 * A bar of round length: 1, 2 or 5 times a power of ten of the unit, the longest that fits.
 *
 * @param scale points per half-nanometre
 */
record ScaleBar(String unit, long unitLength, double scale) {
  private static final int[] STEPS = {5, 2, 1};

  void paint(Graphics2D pen, double left, double line, double room) {
    BigDecimal length = longest(room);
    double points = length.doubleValue() * unitLength * scale;
    pen.setStroke(new BasicStroke(0.6f));
    pen.setColor(Color.WHITE);
    pen.fill(new Rectangle2D.Double(left, line - 5, points, 3.5));
    pen.setColor(Color.BLACK);
    pen.fill(new Rectangle2D.Double(left, line - 5, points / 2, 3.5));
    pen.draw(new Rectangle2D.Double(left, line - 5, points, 3.5));
    Lettering.write(
        pen,
        Typeface.PLAIN,
        Lettering.SMALL,
        length.toPlainString() + " " + unit,
        left + points + 4,
        line - 1);
  }

  private BigDecimal longest(double room) {
    for (int exponent = 4; ; exponent--) {
      for (int step : STEPS) {
        BigDecimal length = BigDecimal.valueOf(step).scaleByPowerOfTen(exponent);
        if (length.doubleValue() * unitLength * scale <= room) {
          return length;
        }
      }
    }
  }
}
