package org.jawroom.drawing;

import java.awt.Graphics2D;

/**
 * Something that can be drawn, with its size in points; it paints nothing outside (0, 0, width,
 * height).
 */
public interface Picture {
  double width();

  double height();

  /**
   * Paints with {@code pen}, which stands at the upper left corner, y down; leaves pen as it was.
   */
  void paint(Graphics2D pen);
}
