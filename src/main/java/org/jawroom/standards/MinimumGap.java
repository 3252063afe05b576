package org.jawroom.standards;

import org.jawroom.geometry.Length;

/**
 * Gaps that spare a part of the body from being crushed: ISO 13854, values as several pages quote
 * EN 349, its predecessor; that the table is unchanged is from memory. Half-nanometres.
 */
public final class MinimumGap {
  public static final long FINGER = 25 * Length.MM;
  public static final long HAND = 100 * Length.MM;

  private MinimumGap() {}
}
