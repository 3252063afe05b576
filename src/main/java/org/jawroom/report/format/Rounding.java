package org.jawroom.report.format;

import org.jawroom.geometry.Length;

/** Which way a figure gives. */
public enum Rounding {
  /** Toward minus infinity: what is left over. */
  DOWN,
  /** Toward plus infinity: what is needed or missed by. */
  UP,
  /** To the nearest, halves up: a place, of which neither way is the safer. */
  NEAREST;

  /** How many {@code grain}s (half-nanometres, even) {@code length} comes to. */
  public long count(long length, long grain) {
    return switch (this) {
      case DOWN -> Length.floorTo(length, grain) / grain;
      case UP -> Length.ceilTo(length, grain) / grain;
      case NEAREST -> Length.floorTo(length + grain / 2, grain) / grain;
    };
  }
}
