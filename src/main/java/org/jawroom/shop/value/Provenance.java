package org.jawroom.shop.value;

/**
 * The accuracy and origin of a row's numbers.
 *
 * @param tolerance greatest error either way, half-nanometres, 0 or more
 * @param assumedExact whether the row gives neither tolerance nor source, so that 0 is assumed
 * @param source drawing, caliper, rule, tape or brochure, as written, or empty
 * @param measured who measured and when, free text, or empty
 */
public record Provenance(long tolerance, boolean assumedExact, String source, String measured) {
  public Provenance {
    Require.notNegative("tolerance", tolerance);
  }

  /** A copy with another tolerance. */
  public Provenance withTolerance(long tolerance) {
    return new Provenance(tolerance, assumedExact, source, measured);
  }
}
