package org.jawroom.report.card;

import java.io.IOException;

/** A block padded below to a least height. */
record AtLeast(Block block, double height) implements Block {

  @Override
  public void draw(Pen pen, double x, double y) throws IOException {
    block.draw(pen, x, y);
  }
}
