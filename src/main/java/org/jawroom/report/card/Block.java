package org.jawroom.report.card;

import java.io.IOException;

/** A piece of a page, already laid out for its width. */
interface Block {

  /** Points. */
  double height();

  /** With its upper left corner at ({@code x}, {@code y}). */
  void draw(Pen pen, double x, double y) throws IOException;
}
