package org.jawroom.report.card.block;

import java.io.IOException;

/**
 * A block in a frame.
 *
 * @param width of the frame
 * @param thick the line width
 * @param gray of the background, 1 for white
 */
public record Framed(Block inside, double width, double padding, double thick, double gray)
    implements Block {

  @Override
  public double height() {
    return inside.height() + 2 * padding;
  }

  @Override
  public void draw(Pen pen, double x, double y) throws IOException {
    pen.shade(x, y, width, height(), gray);
    pen.frame(x, y, width, height(), thick);
    inside.draw(pen, x + padding, y + padding);
  }
}
