package org.jawroom.report.format;

/** The direction of rounding. */
public enum Rounding {
  /** Toward minus infinity: for what remains. */
  DOWN,
  /** Toward plus infinity: for what is needed or missing. */
  UP,
  /** To the nearest, halves up: for a place, where neither direction is safer. */
  NEAREST;

  /** Converts {@code length} to a number of {@code grain}s (half-nanometres, even). */
  public long count(long length, long grain) {
    return switch (this) {
      case DOWN -> Math.floorDiv(length, grain);
      case UP -> -Math.floorDiv(-length, grain);
      case NEAREST -> Math.floorDiv(length + grain / 2, grain);
    };
  }
}
