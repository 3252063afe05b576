package org.jawroom.report.card.block;

import java.io.IOException;

/** A label over a line to sign on. */
public record Signature(Prose label, double width, double height) implements Block {

  @Override
  public void draw(Pen pen, double x, double y) throws IOException {
    label.draw(pen, x, y);
    pen.line(x, y + height, x + width, y + height, 0.75);
  }
}
