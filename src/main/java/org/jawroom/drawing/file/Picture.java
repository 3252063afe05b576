package org.jawroom.drawing.file;

import java.awt.Graphics2D;

/**
 * Something that can be drawn, with its size in points; it paints nothing outside (0, 0, width,
 * height).
 */
public interface Picture {
  double width();

  double height();

  /**
   * Paints with {@code pen}, whose origin is the upper left corner, y down; restores the pen's
   * state.
   */
  void paint(Graphics2D pen);
}
