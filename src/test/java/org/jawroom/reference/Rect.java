package org.jawroom.reference;

/** A rectangle of the table's plane; whether it is open or closed is for the user of it to say. */
public record Rect(long xLo, long xHi, long yLo, long yHi) {

  public boolean holdsInside(long x, long y) {
    return xLo < x && x < xHi && yLo < y && y < yHi;
  }
}
