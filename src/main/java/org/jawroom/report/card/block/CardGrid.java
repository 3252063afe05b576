package org.jawroom.report.card.block;

import java.io.IOException;
import java.util.List;

/**
 * A ruled table; its first row is the header row.
 *
 * @param widths of the columns
 * @param rows of cells, laid out for the column width minus twice the padding; an empty cell is a
 *     block of height 0
 */
public record CardGrid(List<Double> widths, List<List<Block>> rows, double padding)
    implements Block {
  private static final double HEAD = 0.88;

  public CardGrid {
    widths = List.copyOf(widths);
    rows = rows.stream().map(List::copyOf).toList();
  }

  @Override
  public double height() {
    return rows.stream().mapToDouble(this::height).sum();
  }

  private double height(List<Block> row) {
    return row.stream().mapToDouble(Block::height).max().orElse(0) + 2 * padding;
  }

  @Override
  public void draw(Pen pen, double x, double y) throws IOException {
    double top = y;
    for (int i = 0; i < rows.size(); i++) {
      List<Block> row = rows.get(i);
      double high = height(row);
      double left = x;
      for (int column = 0; column < row.size(); column++) {
        double wide = widths.get(column);
        if (i == 0) {
          pen.shade(left, top, wide, high, HEAD);
        }
        pen.frame(left, top, wide, high, column == row.size() - 1 && i > 0 ? 1.5 : 0.5);
        row.get(column).draw(pen, left + padding, top + padding);
        left += wide;
      }
      top += high;
    }
  }
}
