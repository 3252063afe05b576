package org.jawroom.standards;

import org.jawroom.geometry.Length;

/**
 * Minimum gaps that prevent crushing of parts of the body, half-nanometres. ISO 13854, with the
 * values that several pages quote for its predecessor EN 349; that ISO 13854 kept them is from
 * memory.
 */
public final class MinimumGap {
  public static final long FINGER = 25 * Length.MM;
  public static final long HAND = 100 * Length.MM;

  private MinimumGap() {}
}
