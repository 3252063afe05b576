package org.jawroom.report.card.block;

import java.io.IOException;

/** A part of a page, already laid out for its width. */
public interface Block {

  /** The height in points. */
  double height();

  /** Draws the block with its upper left corner at ({@code x}, {@code y}). */
  void draw(Pen pen, double x, double y) throws IOException;
}
