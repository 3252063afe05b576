package org.jawroom.report.card;

import java.io.IOException;

/** A block with room under it. */
record AtLeast(Block block, double height) implements Block {

  @Override
  public void draw(Pen pen, double x, double y) throws IOException {
    block.draw(pen, x, y);
  }
}
