package org.jawroom.report.card.block;

import java.io.IOException;
import java.util.List;

/** Blocks one below the other, {@code gap} points between them. */
public record Stack(List<Block> blocks, double gap) implements Block {
  public Stack {
    blocks = List.copyOf(blocks);
  }

  @Override
  public double height() {
    double gaps = gap * Math.max(0, blocks.size() - 1);
    return gaps + blocks.stream().mapToDouble(Block::height).sum();
  }

  @Override
  public void draw(Pen pen, double x, double y) throws IOException {
    double next = y;
    for (Block block : blocks) {
      block.draw(pen, x, next);
      next += block.height() + gap;
    }
  }
}
