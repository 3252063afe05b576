package org.jawroom.drawing.paint;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jawroom.drawing.text.Lettering;
import org.jawroom.drawing.text.Typeface;

/** Writes labels where there is space, none over another. */
final class NameLabels {
  private final Graphics2D pen;
  private final List<Rectangle2D> taken = new ArrayList<>();
  private final List<Rectangle2D> bare = new ArrayList<>();

  NameLabels(Graphics2D pen) {
    this.pen = pen;
  }

  /** Reserves an area in which no label may be written. */
  void keepFree(Rectangle2D area) {
    taken.add(area);
  }

  /** Prefers that a call-out covers nothing of an area. */
  void keepCallOutsOff(Rectangle2D area) {
    bare.add(area);
  }

  /** How much a call-out would cover of what is written, reserved or to be seen. */
  double covered(Rectangle2D box) {
    return Stream.concat(taken.stream(), bare.stream())
        .filter(box::intersects)
        .map(box::createIntersection)
        .mapToDouble(both -> both.getWidth() * both.getHeight())
        .sum();
  }

  /**
   * Writes {@code text} at the first of {@code places} (left end and baseline) that is free and
   * within {@code frame}.
   *
   * @return whether there was one
   */
  boolean write(String text, Typeface face, double size, Rectangle2D frame, double[]... places) {
    double width = Lettering.width(face, size, text);
    for (double[] place : places) {
      Rectangle2D area =
          new Rectangle2D.Double(place[0] - 1, place[1] - size * 0.8, width + 2, size);
      if (frame.contains(area) && taken.stream().noneMatch(area::intersects)) {
        Lettering.writeClear(pen, face, size, text, place[0], place[1]);
        taken.add(area);
        return true;
      }
    }
    return false;
  }
}
