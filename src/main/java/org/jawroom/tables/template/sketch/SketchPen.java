package org.jawroom.tables.template.sketch;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Set;
import javax.imageio.ImageIO;

/**
 * Draws a dimensioned sketch. Positions are in the drawing's own units, x to the right and y up;
 * sizes of letters and arrows are in pixels of the finished picture, whatever the scale. Sketches
 * are illustrations; nothing is computed from them.
 */
final class SketchPen {
  static final Color CASTING = new Color(0xDD, 0xE4, 0xE8);
  static final Color MOVING = new Color(0xF4, 0xE1, 0xBF);
  static final Color STEEL = new Color(0xB9, 0xC4, 0xCA);
  static final Color INK = new Color(0x2B, 0x37, 0x3D);
  static final Color MEASURE = new Color(0x1F, 0x4E, 0x79);
  static final Color ACCENT = new Color(0xB2, 0x45, 0x12);
  static final Color FAINT = new Color(0x9A, 0xA5, 0xAB);

  /** Rendered pixels per displayed pixel, so that print stays crisp. */
  static final int FINENESS = 2;

  private static final float ARROW = 9;

  private final BufferedImage image;
  private final Graphics2D g;
  private final double scale;
  private final double left;
  private final double bottom;
  private final Set<String> marked;

  /**
   * @param width of the displayed picture in pixels
   * @param height of the displayed picture in pixels
   * @param scale pixels per unit of the drawing
   * @param left the drawing's x at the left edge
   * @param bottom the drawing's y at the lower edge
   * @param marked columns whose labels get a frame
   */
  SketchPen(int width, int height, double scale, double left, double bottom, Set<String> marked) {
    this.marked = marked;
    image = new BufferedImage(width * FINENESS, height * FINENESS, BufferedImage.TYPE_INT_RGB);
    g = image.createGraphics();
    g.setColor(Color.WHITE);
    g.fillRect(0, 0, image.getWidth(), image.getHeight());
    g.scale(FINENESS, FINENESS);
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setRenderingHint(
        RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
    g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    this.scale = scale;
    this.left = left;
    this.bottom = bottom;
    font(Font.PLAIN, 13);
  }

  int shownHeight() {
    return image.getHeight() / FINENESS;
  }

  private double px(double x) {
    return (x - left) * scale;
  }

  private double py(double y) {
    return shownHeight() - (y - bottom) * scale;
  }

  private void font(int style, int size) {
    g.setFont(new Font(Font.SANS_SERIF, style, size));
  }

  private void stroke(double width, float... dashes) {
    g.setStroke(
        dashes.length == 0
            ? new BasicStroke((float) width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND)
            : new BasicStroke(
                (float) width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, dashes, 0));
  }

  private Rectangle2D rectangle(double x1, double x2, double y1, double y2) {
    return new Rectangle2D.Double(px(x1), py(y2), (x2 - x1) * scale, (y2 - y1) * scale);
  }

  /** A filled body with an outline. */
  void body(Color fill, double x1, double x2, double y1, double y2) {
    Shape shape = rectangle(x1, x2, y1, y2);
    g.setColor(fill);
    g.fill(shape);
    stroke(1.6);
    g.setColor(INK);
    g.draw(shape);
  }

  /** The outline of something that stands elsewhere, or is hidden. */
  void ghost(double x1, double x2, double y1, double y2) {
    stroke(1.2, 5, 4);
    g.setColor(FAINT);
    g.draw(rectangle(x1, x2, y1, y2));
  }

  /** A wall of which only the near face matters: hatched. */
  void wall(double x1, double x2, double y1, double y2) {
    Rectangle2D shape = rectangle(x1, x2, y1, y2);
    g.setColor(new Color(0xEE, 0xEE, 0xEE));
    g.fill(shape);
    Shape clip = g.getClip();
    g.clip(shape);
    stroke(1);
    g.setColor(FAINT);
    double reach = shape.getWidth() + shape.getHeight();
    for (double d = 0; d < reach; d += 7) {
      g.draw(
          new Line2D.Double(
              shape.getX() + d,
              shape.getY(),
              shape.getX() + d - shape.getHeight(),
              shape.getMaxY()));
    }
    g.setClip(clip);
    stroke(1.6);
    g.setColor(INK);
    g.draw(shape);
  }

  void round(Color fill, double x, double y, double radius) {
    Shape shape =
        new Ellipse2D.Double(
            px(x - radius), py(y + radius), 2 * radius * scale, 2 * radius * scale);
    g.setColor(fill);
    g.fill(shape);
    stroke(1.6);
    g.setColor(INK);
    g.draw(shape);
  }

  /** A centre line. */
  void axis(double x1, double y1, double x2, double y2) {
    stroke(1, 12, 3, 2, 3);
    g.setColor(FAINT);
    g.draw(new Line2D.Double(px(x1), py(y1), px(x2), py(y2)));
  }

  /** A thin solid line, as an extension line from a body to its dimension. */
  void extension(double x1, double y1, double x2, double y2) {
    stroke(0.8);
    g.setColor(FAINT);
    g.draw(new Line2D.Double(px(x1), py(y1), px(x2), py(y2)));
  }

  /** A dimension from x1 to x2 at height y, its label above the line. */
  void across(Color colour, double x1, double x2, double y, String label) {
    arrows(colour, px(x1), py(y), px(x2), py(y));
    text(label, (px(x1) + px(x2)) / 2, py(y) - 5, 0.5, colour, Font.PLAIN, 13);
  }

  /** As {@link #across}, with the label to the right or left of the line. */
  void acrossBeside(Color colour, double x1, double x2, double y, boolean right, String label) {
    arrows(colour, px(x1), py(y), px(x2), py(y));
    double off = isShort((x2 - x1) * scale) ? 22 : 12;
    double at = right ? px(Math.max(x1, x2)) + off : px(Math.min(x1, x2)) - off;
    text(label, at, py(y) + 4, right ? 0 : 1, colour, Font.PLAIN, 13);
  }

  /** A dimension from y1 to y2 at x, its label beside the line. */
  void upright(Color colour, double x, double y1, double y2, boolean right, String label) {
    arrows(colour, px(x), py(y1), px(x), py(y2));
    double at = px(x) + (right ? 6 : -6);
    text(label, at, (py(y1) + py(y2)) / 2 + 4, right ? 0 : 1, colour, Font.PLAIN, 13);
  }

  private void arrows(Color colour, double x1, double y1, double x2, double y2) {
    g.setColor(colour);
    stroke(1.3);
    double length = Math.hypot(x2 - x1, y2 - y1);
    double ux = (x2 - x1) / length;
    double uy = (y2 - y1) / length;
    // A short dimension has its arrows outside, pointing in.
    double way = isShort(length) ? -1 : 1;
    double tail = way < 0 ? 1.8 * ARROW : 0;
    g.draw(new Line2D.Double(x1 - tail * ux, y1 - tail * uy, x2 + tail * ux, y2 + tail * uy));
    head(x1, y1, way * ux, way * uy);
    head(x2, y2, -way * ux, -way * uy);
  }

  private static boolean isShort(double length) {
    return Math.abs(length) < 3 * ARROW;
  }

  private void head(double x, double y, double ux, double uy) {
    Path2D tip = new Path2D.Double();
    tip.moveTo(x, y);
    tip.lineTo(x + ARROW * ux - 3.2 * uy, y + ARROW * uy + 3.2 * ux);
    tip.lineTo(x + ARROW * ux + 3.2 * uy, y + ARROW * uy - 3.2 * ux);
    tip.closePath();
    g.fill(tip);
  }

  /** A label that starts at (x, y), with a leader line to the place it describes. */
  void leader(double x, double y, double toX, double toY, boolean right, String label) {
    extension(x, y, toX, toY);
    g.setColor(MEASURE);
    g.fill(new Ellipse2D.Double(px(toX) - 2.5, py(toY) - 2.5, 5, 5));
    text(label, px(x) + (right ? 4 : -4), py(y) + 4, right ? 0 : 1, MEASURE, Font.PLAIN, 13);
  }

  /** Text in the drawing, centred. */
  void note(double x, double y, Color colour, String words) {
    text(words, px(x), py(y) + 4, 0.5, colour, Font.ITALIC, 13);
  }

  /** The picture's title, upper left. */
  void title(String words) {
    text(words, 12, 24, 0, INK, Font.BOLD, 16);
  }

  /** A line of small print; line 0 is the lowest. */
  void footnote(int line, String words) {
    text(words, 12, shownHeight() - 12 - 18 * line, 0, INK, Font.PLAIN, 12);
  }

  /** A panel's heading at a position of the drawing. */
  void heading(double x, double y, String words) {
    text(words, px(x), py(y), 0, INK, Font.BOLD, 14);
  }

  private void text(
      String words, double x, double y, double anchor, Color colour, int style, int size) {
    font(style, size);
    FontMetrics metrics = g.getFontMetrics();
    double start = x - anchor * metrics.stringWidth(words);
    if (isMarked(words)) {
      frame(start, y, metrics, words);
    }
    g.setColor(colour);
    g.drawString(words, (float) start, (float) y);
  }

  /** A label may stand for two columns: {@code rear_projection} for closed and open. */
  private boolean isMarked(String label) {
    return marked.stream()
        .anyMatch(column -> column.equals(label) || column.startsWith(label + "_"));
  }

  /** White under the label, a heavy black frame round it: seen in black and white, too. */
  private void frame(double x, double y, FontMetrics metrics, String words) {
    Rectangle2D round =
        new Rectangle2D.Double(
            x - 4,
            y - metrics.getAscent() - 1,
            metrics.stringWidth(words) + 8.0,
            metrics.getAscent() + metrics.getDescent() + 2.0);
    g.setColor(Color.WHITE);
    g.fill(round);
    stroke(2.4);
    g.setColor(Color.BLACK);
    g.draw(round);
  }

  /** The finished picture. */
  byte[] png() {
    g.dispose();
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    // No cache file: in a shared folder it cannot always be created.
    ImageIO.setUseCache(false);
    try {
      ImageIO.write(image, "png", bytes);
    } catch (IOException e) {
      throw new UncheckedIOException("encoding a picture in memory failed", e);
    }
    return bytes.toByteArray();
  }
}
