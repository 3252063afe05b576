package org.jawroom.drawing.view;

import java.awt.BasicStroke;
import java.awt.Color;

/**
 * The graphic styles of a drawing. Line style and hatching distinguish them, so that a
 * black-and-white copy shows the same; the few colours are light.
 */
public enum Ink {
  TABLE(new Color(0xEEEEEE), null, line(0.9)),
  SLOT(new Color(0xD2D2D2), null, line(0.4)),
  REACH(null, null, dashes(0.7, 7, 2, 1.5f, 2)),
  WORK(null, null, dashes(0.5, 1.5f, 1.5f)),
  GUARD_SWEPT(new Color(0xF6EFE3), null, dashes(0.4, 3, 2)),
  GUARD(new Color(0xF3E7D2), Hatch.WIDE, line(0.8)),
  /** Where the face of a guard may stand, its reading known within bounds only. */
  GUARD_OPEN(new Color(0xFAF5EB), Hatch.BACK, dashes(0.5, 2, 2)),
  /** The same of an end of a part. */
  PART_OPEN(null, Hatch.BACK, dashes(0.5, 2, 2)),
  /** Where the verdict takes such a face to stand. */
  OPEN_EDGE(null, null, line(1.1)),
  GUARD_OVERHEAD(null, null, dashes(0.7, 8, 2)),
  SWEPT(new Color(0xDCEAF5), null, dashes(0.5, 3, 1.5f)),
  BODY(new Color(0x9DC0DC), null, line(0.8)),
  CLAMP(new Color(0xDCD2B0), null, line(0.8)),
  HANDLE(null, null, dashes(0.8, 4, 1.5f, 1, 1.5f)),
  BOLT(new Color(0x303030), null, line(0.5)),
  OVERLAP(new Color(0xE8A48A), Hatch.CROSS, line(0.8));

  private final Color fill;
  private final Hatch hatch;
  private final BasicStroke stroke;

  Ink(Color fill, Hatch hatch, BasicStroke stroke) {
    this.fill = fill;
    this.hatch = hatch;
    this.stroke = stroke;
  }

  /** Null for none. */
  public Color fill() {
    return fill;
  }

  /** Null for none. */
  public Hatch hatch() {
    return hatch;
  }

  public BasicStroke stroke() {
    return stroke;
  }

  private static BasicStroke line(double width) {
    return new BasicStroke((float) width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER);
  }

  private static BasicStroke dashes(double width, float... pattern) {
    return new BasicStroke(
        (float) width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, pattern, 0);
  }
}
