package org.jawroom.drawing;

import java.awt.geom.Rectangle2D;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;
import org.jawroom.drawing.view.View.Flat;

/**
 * The positions of the two views and the title block on the sheet, at one scale, as large as
 * possible.
 *
 * @param scale points per half-nanometre
 * @param title empty if the text stands elsewhere
 */
record Arrangement(double scale, Rectangle2D plan, Rectangle2D side, Optional<Rectangle2D> title) {

  static final double EDGE = 8;

  /** Between views; includes the heading of the lower one. */
  static final double GAP = 16;

  /** The height of a view's heading above it. */
  static final double HEADING = 10;

  private static final double TITLE_WIDTH = 172;
  private static final double TITLE_HEIGHT = 165;
  private static final double WIDEST_TITLE = 260;

  /** Of three arrangements the one with the largest scale; of equals the first. */
  static Arrangement of(double width, double height, Flat plan, Flat side) {
    double across = width - 2 * EDGE;
    double down = height - 2 * EDGE;
    return Stream.of(
            under(across, down, plan, side),
            column(across, down, plan, side),
            beside(across, down, plan, side))
        .max(Comparator.comparingDouble(Arrangement::scale))
        .orElseThrow();
  }

  /** The two views alone, one below the other or side by side, whichever gives the larger scale. */
  static Arrangement untitled(double width, double height, Flat plan, Flat side) {
    double high = height - HEADING - 2;
    double stacked =
        least((high - GAP) / (up(plan) + up(side)), width / Math.max(right(plan), right(side)));
    double abreast =
        least(high / Math.max(up(plan), up(side)), (width - GAP) / (right(plan) + right(side)));
    double scale = Math.max(stacked, abreast);
    Rectangle2D first = frame(1, HEADING, plan, scale);
    Rectangle2D second =
        stacked >= abreast
            ? frame(1, first.getMaxY() + GAP, side, scale)
            : frame(first.getMaxX() + GAP, HEADING, side, scale);
    return new Arrangement(scale, first, second, Optional.empty());
  }

  /** The side view under the plan, the title block to its right. */
  private static Arrangement under(double width, double height, Flat plan, Flat side) {
    double down = height - HEADING - GAP;
    double scale =
        least(
            down / (up(plan) + up(side)),
            width / right(plan),
            (width - TITLE_WIDTH - GAP) / right(side),
            (down + GAP - HEADING - TITLE_HEIGHT) / up(plan));
    Rectangle2D top = frame(EDGE, EDGE + HEADING, plan, scale);
    Rectangle2D below = frame(EDGE, top.getMaxY() + GAP, side, scale);
    double left = Math.max(below.getMaxX() + GAP, EDGE + width - WIDEST_TITLE);
    return new Arrangement(scale, top, below, title(left, top.getMaxY() + GAP, width, height));
  }

  /** The side view under the plan, the title block to the right of both. */
  private static Arrangement column(double width, double height, Flat plan, Flat side) {
    double scale =
        least(
            (height - HEADING - GAP) / (up(plan) + up(side)),
            (width - TITLE_WIDTH - GAP) / Math.max(right(plan), right(side)));
    Rectangle2D top = frame(EDGE, EDGE + HEADING, plan, scale);
    Rectangle2D below = frame(EDGE, top.getMaxY() + GAP, side, scale);
    double left = Math.max(top.getMaxX(), below.getMaxX()) + GAP;
    return new Arrangement(
        scale, top, below, title(Math.max(left, EDGE + width - WIDEST_TITLE), EDGE, width, height));
  }

  /** The side view to the right of the plan, the title block under it. */
  private static Arrangement beside(double width, double height, Flat plan, Flat side) {
    double across = width - GAP;
    double scale =
        least(
            (height - HEADING) / up(plan),
            across / (right(plan) + right(side)),
            (across - TITLE_WIDTH) / right(plan),
            (height - HEADING - GAP - TITLE_HEIGHT) / up(side));
    Rectangle2D first = frame(EDGE, EDGE + HEADING, plan, scale);
    double left = first.getMaxX() + GAP;
    Rectangle2D second = frame(left, EDGE + HEADING, side, scale);
    return new Arrangement(
        scale, first, second, title(left, second.getMaxY() + GAP, width, height));
  }

  private static Rectangle2D frame(double left, double top, Flat seen, double scale) {
    return new Rectangle2D.Double(left, top, right(seen) * scale, up(seen) * scale);
  }

  /** From its upper left corner to the lower right corner of the sheet. */
  private static Optional<Rectangle2D> title(double left, double top, double width, double height) {
    return Optional.of(new Rectangle2D.Double(left, top, EDGE + width - left, EDGE + height - top));
  }

  private static double least(double... scales) {
    return Arrays.stream(scales).min().orElseThrow();
  }

  private static double right(Flat flat) {
    return flat.right().length();
  }

  private static double up(Flat flat) {
    return flat.up().length();
  }
}
