package org.jawroom.report.card;

import java.util.stream.DoubleStream;

/** The type sizes of a card in points, all derived from the body size. */
record Type(double body) {

  /** Smaller type is unreadable at a machine. */
  static final double LEAST = 7;

  private static final double MOST = 10;
  private static final double STEP = 0.25;

  /** From the largest to the smallest. */
  static DoubleStream sizes() {
    return DoubleStream.iterate(MOST, size -> size >= LEAST, size -> size - STEP);
  }

  double small() {
    return Math.max(LEAST, body - 1);
  }

  double heading() {
    return body + 1;
  }

  double title() {
    return body * 1.6;
  }

  double alarm() {
    return body + 2;
  }

  double figure() {
    return body * 2.2;
  }

  double gap() {
    return body * 0.35;
  }
}
