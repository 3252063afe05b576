package org.jawroom.report.card.block;

import java.util.stream.DoubleStream;

/** The type sizes of a card in points, all derived from the body size. */
public record Type(double body) {

  /** Smaller type is unreadable at a machine. */
  static final double LEAST = 7;

  private static final double MOST = 10;
  private static final double STEP = 0.25;

  /** From the largest to the smallest. */
  public static DoubleStream sizes() {
    return DoubleStream.iterate(MOST, size -> size >= LEAST, size -> size - STEP);
  }

  public double small() {
    return Math.max(LEAST, body - 1);
  }

  double heading() {
    return body + 1;
  }

  public double title() {
    return body * 1.6;
  }

  public double alarm() {
    return body + 2;
  }

  public double figure() {
    return body * 2.2;
  }

  public double gap() {
    return body * 0.35;
  }
}
