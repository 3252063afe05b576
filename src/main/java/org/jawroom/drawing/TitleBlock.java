package org.jawroom.drawing;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.List;

/**
 * The words beside the views: names, verdict, clearances, scale, what the lines mean, the caution.
 */
final class TitleBlock {
  private static final BasicStroke THIN = new BasicStroke(0.6f);
  private static final int MAX_TITLE_LINES = 3;

  private final Graphics2D pen;
  private final Rectangle2D frame;
  private final double scale;
  private double y;

  TitleBlock(Graphics2D pen, Rectangle2D frame, double scale) {
    this.pen = pen;
    this.frame = frame;
    this.scale = scale;
    this.y = frame.getMinY() + 2;
  }

  void paint(Caption caption) {
    pen.setStroke(THIN);
    pen.setColor(Color.BLACK);
    pen.draw(frame);
    List<String> title = lines(Typeface.BOLD, Lettering.LARGE, caption.title());
    write(
        Typeface.BOLD, Lettering.LARGE, title.subList(0, Math.min(MAX_TITLE_LINES, title.size())));
    rule();
    double bottom = frame.getMaxY() - captionHeight(caption) - 46;
    for (String line : caption.lines()) {
      List<String> wrapped = lines(Typeface.PLAIN, Lettering.PLAIN, line);
      if (y + wrapped.size() * (Lettering.PLAIN + 1.5) <= bottom) {
        write(Typeface.PLAIN, Lettering.PLAIN, wrapped);
      }
    }
    y = bottom;
    rule();
    new Key(pen, frame.getMinX() + 4, y, frame.getWidth() - 8).paint();
    y = frame.getMaxY() - captionHeight(caption) - 17;
    new ScaleBar(caption.unit(), caption.unitLength(), scale)
        .paint(pen, frame.getMinX() + 5, y + 12, Math.min(130, frame.getWidth() - 50));
    y += 15;
    rule();
    write(Typeface.BOLD, Lettering.SMALL, lines(Typeface.BOLD, Lettering.SMALL, caption.caution()));
  }

  private double captionHeight(Caption caption) {
    return lines(Typeface.BOLD, Lettering.SMALL, caption.caution()).size() * (Lettering.SMALL + 1.5)
        + 4;
  }

  private List<String> lines(Typeface face, double size, String text) {
    return Lettering.wrapped(face, size, text, frame.getWidth() - 9);
  }

  private void write(Typeface face, double size, List<String> lines) {
    for (String line : lines) {
      y += size + 1.5;
      Lettering.write(pen, face, size, line, frame.getMinX() + 5, y - 1);
    }
  }

  private void rule() {
    y += 2.5;
    pen.setStroke(THIN);
    pen.setColor(Color.GRAY);
    pen.draw(new Line2D.Double(frame.getMinX(), y, frame.getMaxX(), y));
  }
}
