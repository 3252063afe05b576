package org.jawroom.reference;

import org.jawroom.geometry.Length;

/** A closed interval of half-nanometres. */
public record Span(long lo, long hi) {
  public static final Span ALL = new Span(-Length.ENDLESS, Length.ENDLESS);

  public Span {
    if (lo > hi) {
      throw new IllegalArgumentException(lo + " > " + hi);
    }
  }

  Span shifted(long by) {
    return new Span(lo + by, hi + by);
  }

  /** max(G.lo − P.hi, P.lo − G.hi), this being P. */
  long gap(Span g) {
    return Math.max(g.lo - hi, lo - g.hi);
  }

  /** The point of this interval nearest to {@code target}. */
  long clamp(long target) {
    return Math.max(lo, Math.min(hi, target));
  }

  boolean limited() {
    return Length.isBounded(lo) || Length.isBounded(hi);
  }
}
