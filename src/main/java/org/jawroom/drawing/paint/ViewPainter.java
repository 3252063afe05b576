package org.jawroom.drawing.paint;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jawroom.drawing.text.Lettering;
import org.jawroom.drawing.text.Typeface;
import org.jawroom.drawing.view.Caption;
import org.jawroom.drawing.view.Ink;
import org.jawroom.drawing.view.Mark;
import org.jawroom.drawing.view.Measure;
import org.jawroom.drawing.view.Tape;
import org.jawroom.drawing.view.View;
import org.jfree.svg.SVGHints;

/** Draws one view: the marks from back to front, then the dimension, then the names. */
public final class ViewPainter {
  private static final BasicStroke FRAME = new BasicStroke(0.4f);

  /** The vise without its handle. */
  private static final Set<Ink> OF_THE_VISE = EnumSet.of(Ink.BODY, Ink.CLAMP, Ink.BOLT);

  /** Thinner lines are invisible on paper. */
  private static final double LEAST = 0.8;

  private final Graphics2D pen;
  private final ViewProjection projection;
  private final NameLabels names;

  public ViewPainter(Graphics2D pen, ViewProjection projection) {
    this.pen = pen;
    this.projection = projection;
    this.names = new NameLabels(pen);
  }

  public void paint(
      List<Mark> marks, Optional<Measure> measure, List<Tape> tapes, Caption caption) {
    pen.setColor(Color.WHITE);
    pen.fill(projection.frame());
    List<Mark> seen = marks.stream().filter(this::isSeen).toList();
    seen.forEach(this::paint);
    pen.setStroke(FRAME);
    pen.setColor(Color.GRAY);
    pen.draw(projection.frame());
    List<Rectangle2D> vise =
        seen.stream()
            .filter(mark -> OF_THE_VISE.contains(mark.ink()))
            .map(mark -> projection.rectangle(mark.flat()))
            .toList();
    if (projection.view() == View.PLAN) {
      vise.stream()
          .reduce(Rectangle2D::createUnion)
          .ifPresent(
              body -> new TapePainter(pen, projection, names, table(seen), body).paint(tapes));
    }
    vise.forEach(names::keepCallOutsOff);
    measure
        .filter(shown -> projection.view().shows(shown.axis()))
        .ifPresent(shown -> new DimensionPainter(pen, projection, names).paint(shown, caption));
    nameAll(seen.stream().filter(mark -> !mark.name().isEmpty()).toList());
  }

  private Rectangle2D table(List<Mark> seen) {
    return seen.stream()
        .filter(mark -> mark.ink() == Ink.TABLE)
        .map(mark -> projection.rectangle(mark.flat()))
        .findFirst()
        .orElseThrow();
  }

  /** The handle is drawn as an outline only; its label must not seem to belong to another part. */
  private void nameAll(List<Mark> named) {
    named.stream().filter(this::holdsItsName).forEach(this::name);
    List<Mark> small = named.stream().filter(mark -> !holdsItsName(mark)).toList();
    small.stream().filter(mark -> mark.ink() != Ink.BODY).forEach(this::name);
    named.stream()
        .filter(mark -> mark.ink() == Ink.HANDLE)
        .forEach(handle -> names.keepFree(projection.rectangle(handle.flat())));
    small.stream().filter(mark -> mark.ink() == Ink.BODY).forEach(this::name);
  }

  private boolean holdsItsName(Mark mark) {
    Rectangle2D area = projection.rectangle(mark.flat());
    double width = Lettering.width(Typeface.PLAIN, Lettering.SMALL, mark.name());
    return area.getWidth() > width + 3 && area.getHeight() > Lettering.SMALL + 1;
  }

  /** A guard over or under everything visible would hatch the whole view, so it is left out. */
  private boolean isSeen(Mark mark) {
    return projection.sees(mark.flat())
        && !(mark.ink() == Ink.GUARD_OVERHEAD && projection.fills(mark.flat()));
  }

  private void paint(Mark mark) {
    Rectangle2D area = projection.rectangle(mark.flat());
    String id = projection.view().name().toLowerCase(java.util.Locale.ROOT) + "-" + mark.id();
    pen.setRenderingHint(SVGHints.KEY_BEGIN_GROUP, id);
    if (!mark.name().isEmpty()) {
      pen.setRenderingHint(SVGHints.KEY_ELEMENT_TITLE, Typeface.shown(mark.name()));
    }
    if (mark.ink() == Ink.BOLT) {
      bolt(area);
    } else {
      Shape shape = mark.outline().isEmpty() ? thick(area) : projection.polygon(mark.outline());
      if (mark.ink().fill() != null) {
        pen.setColor(mark.ink().fill());
        pen.fill(shape);
      }
      if (mark.ink().hatch() != null) {
        mark.ink().hatch().draw(pen, area);
      }
      pen.setStroke(mark.ink().stroke());
      pen.setColor(Color.BLACK);
      pen.draw(mark.outline().isEmpty() ? area : shape);
    }
    pen.setRenderingHint(SVGHints.KEY_END_GROUP, id);
  }

  private static Rectangle2D thick(Rectangle2D area) {
    return new Rectangle2D.Double(
        area.getX(),
        area.getY(),
        Math.max(LEAST, area.getWidth()),
        Math.max(LEAST, area.getHeight()));
  }

  /** A bolt from above: a cross in a circle, never too small to see. */
  private void bolt(Rectangle2D area) {
    double half = Math.max(2, area.getWidth() / 2);
    double x = area.getCenterX();
    double y = area.getCenterY();
    pen.setColor(Color.WHITE);
    pen.fill(new java.awt.geom.Ellipse2D.Double(x - half, y - half, 2 * half, 2 * half));
    pen.setColor(Ink.BOLT.fill());
    pen.setStroke(Ink.BOLT.stroke());
    pen.draw(new java.awt.geom.Ellipse2D.Double(x - half, y - half, 2 * half, 2 * half));
    pen.draw(new Line2D.Double(x - half - 1.5, y, x + half + 1.5, y));
    pen.draw(new Line2D.Double(x, y - half - 1.5, x, y + half + 1.5));
  }

  private void name(Mark mark) {
    Rectangle2D area = projection.rectangle(mark.flat());
    double size = Lettering.SMALL;
    double width = Lettering.width(Typeface.PLAIN, size, mark.name());
    double middle = area.getCenterX() - width / 2;
    double line = area.getCenterY() + size * 0.35;
    double left = area.getMinX() + 3;
    double right = area.getMaxX() - 3 - width;
    double top = area.getMinY() + size + 1;
    double bottom = area.getMaxY() - 3;
    switch (mark.ink()) {
      case SLOT -> slotNumber(mark, area, size);
      case REACH ->
          names.write(
              mark.name(),
              Typeface.PLAIN,
              size,
              projection.frame(),
              new double[][] {{left, top}, {right, top}, {left, bottom}, {right, bottom}});
      case GUARD, GUARD_OVERHEAD ->
          names.write(
              mark.name(),
              Typeface.PLAIN,
              size,
              projection.frame(),
              new double[][] {
                {left, line},
                {middle, line},
                {right, line},
                {left, top},
                {left, bottom},
                {right, top},
                {right, bottom},
                {middle, area.getMinY() - 3},
                {middle, area.getMaxY() + size + 1},
              });
      default -> {
        if (holdsItsName(mark)) {
          names.write(
              mark.name(),
              Typeface.PLAIN,
              size,
              area,
              new double[][] {{middle, line}, {middle, top}, {middle, bottom}});
        } else {
          names.write(
              mark.name(),
              Typeface.PLAIN,
              size,
              projection.frame(),
              new double[][] {
                {area.getMaxX() + 4, line}, {area.getMinX() - 4 - width, line},
                {middle, area.getMinY() - 4}, {middle, area.getMaxY() + size + 2},
              });
        }
      }
    }
  }

  /** At both ends of the slot; in the side view above it. */
  private void slotNumber(Mark mark, Rectangle2D area, double size) {
    double width = Lettering.width(Typeface.BOLD, size, mark.name());
    if (projection.view() == View.SIDE) {
      names.write(
          mark.name(),
          Typeface.BOLD,
          size,
          projection.frame(),
          new double[] {area.getCenterX() - width / 2, area.getMaxY() + size});
      return;
    }
    boolean across = area.getWidth() > area.getHeight();
    double line = area.getCenterY() + size * 0.35;
    double middle = area.getCenterX() - width / 2;
    names.write(
        mark.name(),
        Typeface.BOLD,
        size,
        projection.frame(),
        across
            ? new double[] {area.getMinX() + 2, line}
            : new double[] {middle, area.getMaxY() - 2});
    names.write(
        mark.name(),
        Typeface.BOLD,
        size,
        projection.frame(),
        across
            ? new double[] {area.getMaxX() - 2 - width, line}
            : new double[] {middle, area.getMinY() + size + 1});
  }
}
