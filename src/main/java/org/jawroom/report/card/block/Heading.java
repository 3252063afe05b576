package org.jawroom.report.card.block;

import java.io.IOException;

/** A heading over a rule. */
public record Heading(Prose words, double width) implements Block {

  private static final double UNDER = 3;

  public static Heading of(Letters letters, String text, Type type, double width) {
    return new Heading(Prose.bold(letters, text, type.heading(), width), width);
  }

  @Override
  public double height() {
    return words.height() + UNDER;
  }

  @Override
  public void draw(Pen pen, double x, double y) throws IOException {
    words.draw(pen, x, y);
    double rule = y + words.height() + 0.5;
    pen.line(x, rule, x + width, rule, 1);
  }
}
