package org.jawroom.reference.space;

import org.jawroom.geometry.Length;

/**
 * A closed interval of half-nanometres; empty where {@code lo} lies above {@code hi}, as is what
 * the values of a reading share where they share nothing.
 */
public record Span(long lo, long hi) {
  public static final Span ALL = new Span(-Length.ENDLESS, Length.ENDLESS);

  public boolean isEmpty() {
    return lo > hi;
  }

  /** The sums of one value of each; without end where one of them is. */
  public Span plus(Span other) {
    return new Span(sum(lo, other.lo), sum(hi, other.hi));
  }

  public Span negated() {
    return new Span(-hi, -lo);
  }

  /** {@code numerator}/2 times every value. */
  public Span halves(long numerator) {
    long a = times(lo, numerator);
    long b = times(hi, numerator);
    return new Span(Math.min(a, b), Math.max(a, b));
  }

  private static long sum(long a, long b) {
    return !Length.isBounded(a) ? a : !Length.isBounded(b) ? b : a + b;
  }

  private static long times(long length, long numerator) {
    return Length.isBounded(length)
        ? length * numerator / 2
        : Long.signum(numerator) * Long.signum(length) * Length.ENDLESS;
  }

  public Span shifted(long by) {
    return new Span(lo + by, hi + by);
  }

  /** max(G.lo − P.hi, P.lo − G.hi), this being P. */
  public long gap(Span g) {
    return Math.max(g.lo - hi, lo - g.hi);
  }

  /** The point of this interval nearest to {@code target}. */
  public long clamp(long target) {
    return Math.max(lo, Math.min(hi, target));
  }

  public boolean limited() {
    return Length.isBounded(lo) || Length.isBounded(hi);
  }
}
