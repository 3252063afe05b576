package org.jawroom.drawing.paint;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import org.jawroom.drawing.text.Lettering;
import org.jawroom.drawing.text.Typeface;
import org.jawroom.drawing.view.Tape;
import org.jawroom.geometry.Axis;
import org.jfree.svg.SVGHints;

/**
 * Draws the tape measures on the plan as dimension lines. One to the base's side ends at the base;
 * one to the datum stands beside the vise, and a line along the datum leads to it.
 */
final class TapePainter {
  private static final BasicStroke LINE = new BasicStroke(0.8f);
  private static final String DATUM = "datum";

  /** Between the vise and a line beside it. */
  private static final double BESIDE = 13;

  private static final double PAST = 5;

  private final Graphics2D pen;
  private final ViewProjection projection;
  private final NameLabels names;
  private final Rectangle2D table;
  private final Rectangle2D body;

  /**
   * @param table the table's top on the sheet
   * @param body the vise on the sheet, without its handle
   */
  TapePainter(
      Graphics2D pen,
      ViewProjection projection,
      NameLabels names,
      Rectangle2D table,
      Rectangle2D body) {
    this.pen = pen;
    this.projection = projection;
    this.names = names;
    this.table = table;
    this.body = body;
  }

  void paint(List<Tape> tapes) {
    List<Line2D> lines = new ArrayList<>();
    for (Tape tape : tapes) {
      String id = "plan-tape-" + tape.axis().letter();
      pen.setRenderingHint(SVGHints.KEY_BEGIN_GROUP, id);
      pen.setColor(Color.BLACK);
      pen.setStroke(LINE);
      Line2D line = line(tape);
      Arrows.between(pen, line.getP1(), line.getP2());
      if (tape.datum()) {
        lines.add(datum(tape, line.getP2()));
      }
      pen.setRenderingHint(SVGHints.KEY_END_GROUP, id);
      lines.add(line);
      figure(tape, line);
    }
    // Only now, since a figure stands on its own line.
    lines.forEach(line -> names.keepFree(grown(line.getBounds2D())));
  }

  private Line2D line(Tape tape) {
    if (tape.axis() == Axis.X) {
      double y =
          tape.datum()
              ? beyond(body.getMinY(), body.getMaxY(), table.getMinY(), table.getMaxY())
              : within(body.getMinY(), body.getMaxY(), table.getMinY(), table.getMaxY());
      return new Line2D.Double(projection.right(tape.edge()), y, projection.right(tape.at()), y);
    }
    double x =
        tape.datum()
            ? beyond(body.getMinX(), body.getMaxX(), table.getMinX(), table.getMaxX())
            : within(body.getMinX(), body.getMaxX(), table.getMinX(), table.getMaxX());
    return new Line2D.Double(x, projection.up(tape.edge()), x, projection.up(tape.at()));
  }

  /** Beside the vise, over the table if there is room: to its right or front, else opposite. */
  private static double beyond(double lo, double hi, double least, double most) {
    return hi + BESIDE <= most || lo - BESIDE < least ? hi + BESIDE : lo - BESIDE;
  }

  /** Through the vise where it stands over the table. */
  private static double within(double lo, double hi, double least, double most) {
    double from = Math.max(lo, least);
    double to = Math.min(hi, most);
    return from < to ? from + (to - from) * 0.6 : (lo + hi) / 2;
  }

  /** The line along the datum, from the middle of the vise to just past the dimension line. */
  private Line2D datum(Tape tape, Point2D end) {
    boolean level = tape.axis() == Axis.Y;
    double x = level ? body.getCenterX() : end.getX();
    double y = level ? end.getY() : body.getCenterY();
    double toX = level ? end.getX() + Math.copySign(PAST, end.getX() - x) : x;
    double toY = level ? y : end.getY() + Math.copySign(PAST, end.getY() - y);
    Line2D line = new Line2D.Double(x, y, toX, toY);
    pen.draw(line);
    double width = Lettering.width(Typeface.PLAIN, Lettering.SMALL, DATUM);
    double half = Lettering.SMALL * 0.35;
    names.write(
        DATUM,
        Typeface.PLAIN,
        Lettering.SMALL,
        projection.frame(),
        level
            ? new double[][] {{toX > x ? toX + 2 : toX - 2 - width, toY + half}}
            : new double[][] {{toX - width / 2, toY > y ? toY + Lettering.SMALL : toY - 2}});
    return line;
  }

  private void figure(Tape tape, Line2D line) {
    double width = Lettering.width(Typeface.BOLD, Lettering.SMALL, tape.figure());
    double half = Lettering.SMALL * 0.35;
    double[] shares = {0.5, 0.35, 0.65, 0.2, 0.8};
    List<double[]> places = new ArrayList<>();
    boolean level = tape.axis() == Axis.X;
    double length = line.getP1().distance(line.getP2());
    if (length > (level ? width + 12 : Lettering.SMALL + 14)) {
      for (double share : shares) {
        double x = line.getX1() + (line.getX2() - line.getX1()) * share;
        double y = line.getY1() + (line.getY2() - line.getY1()) * share;
        places.add(new double[] {x - width / 2, y + half});
      }
    }
    double x = (line.getX1() + line.getX2()) / 2;
    double y = (line.getY1() + line.getY2()) / 2;
    if (level) {
      places.add(new double[] {x - width / 2, y - 4});
      places.add(new double[] {x - width / 2, y + 4 + Lettering.SMALL});
      places.add(new double[] {Math.min(line.getX1(), line.getX2()) - width - 16, y + half});
    } else {
      places.add(new double[] {x + 4, y + half});
      places.add(new double[] {x - 4 - width, y + half});
      places.add(new double[] {x - width / 2, Math.max(line.getY1(), line.getY2()) + 24});
    }
    names.write(
        tape.figure(),
        Typeface.BOLD,
        Lettering.SMALL,
        projection.frame(),
        places.toArray(double[][]::new));
  }

  private static Rectangle2D grown(Rectangle2D area) {
    return new Rectangle2D.Double(
        area.getX() - 2, area.getY() - 2, area.getWidth() + 4, area.getHeight() + 4);
  }
}
