package org.jawroom.shop;

/**
 * How well a row's numbers are known.
 *
 * @param tolerance how far they may be off either way, half-nanometres, 0 or more
 * @param assumedExact true where the row gave neither tolerance nor source, so that 0 was taken
 * @param source what was measured with, as written (drawing, caliper, rule, tape, brochure), or
 *     empty
 * @param measured who and when, free text, or empty
 */
public record Provenance(long tolerance, boolean assumedExact, String source, String measured) {
  public Provenance {
    Check.notNegative("tolerance", tolerance);
  }

  /** The same source taken to be off by so much at most. */
  public Provenance withTolerance(long tolerance) {
    return new Provenance(tolerance, assumedExact, source, measured);
  }
}
