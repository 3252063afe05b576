package org.jawroom.reference.space;

/** A rectangle in the table plane; its user decides whether it is open or closed. */
public record Rect(long xLo, long xHi, long yLo, long yHi) {

  public boolean holdsInside(long x, long y) {
    return xLo < x && x < xHi && yLo < y && y < yHi;
  }
}
