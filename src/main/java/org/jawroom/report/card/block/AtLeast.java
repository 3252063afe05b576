package org.jawroom.report.card.block;

import java.io.IOException;

/** A block padded below to a least height. */
public record AtLeast(Block block, double height) implements Block {

  @Override
  public void draw(Pen pen, double x, double y) throws IOException {
    block.draw(pen, x, y);
  }
}
