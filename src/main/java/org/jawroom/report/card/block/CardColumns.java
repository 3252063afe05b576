package org.jawroom.report.card.block;

import java.io.IOException;

/** Two blocks side by side, the right one shifted by {@code offset} points. */
public record CardColumns(Block left, Block right, double offset) implements Block {

  @Override
  public double height() {
    return Math.max(left.height(), right.height());
  }

  @Override
  public void draw(Pen pen, double x, double y) throws IOException {
    left.draw(pen, x, y);
    right.draw(pen, x + offset, y);
  }
}
