package org.jawroom.reference.model;

import java.math.BigInteger;
import org.jawroom.geometry.Length;
import org.jawroom.reference.space.Span;

/**
 * A part in the vise frame.
 *
 * @param loClosed its u limits at the least opening, then at the greatest; at best, a lower one
 *     above the upper one means that the values of open readings share nothing there
 * @param cutting its w limits while cutting, {@code null} if it does not count then; {@code
 *     loading} likewise
 */
public record RefPart(
    String name,
    long loClosed,
    long hiClosed,
    long loOpen,
    long hiOpen,
    Span v,
    Span cutting,
    Span loading,
    long tolerance) {

  RefPart raised(long by) {
    return new RefPart(
        name,
        loClosed,
        hiClosed,
        loOpen,
        hiOpen,
        v,
        cutting == null ? null : cutting.shifted(by),
        loading == null ? null : loading.shifted(by),
        tolerance);
  }

  public boolean isHandle() {
    return name.equals("handle");
  }

  public Span w(boolean whileCutting) {
    return whileCutting ? cutting : loading;
  }

  /**
   * The u limits swept over openings {@code s0}…{@code s1} of the range {@code min}…{@code max}.
   */
  public Span u(long s0, long s1, long min, long max) {
    return new Span(
        Math.min(lo(s0, min, max), lo(s1, min, max)), Math.max(hi(s0, min, max), hi(s1, min, max)));
  }

  public long lo(long s, long min, long max) {
    if (min == max) {
      return Math.min(loClosed, loOpen);
    }
    if (!Length.isBounded(loClosed) || !Length.isBounded(loOpen)) {
      return endless(loClosed, loOpen, s == min, s == max);
    }
    return loClosed + floorShare(loOpen - loClosed, s - min, max - min);
  }

  public long hi(long s, long min, long max) {
    if (min == max) {
      return Math.max(hiClosed, hiOpen);
    }
    if (!Length.isBounded(hiClosed) || !Length.isBounded(hiOpen)) {
      return endless(hiClosed, hiOpen, s == min, s == max);
    }
    return hiClosed - floorShare(hiClosed - hiOpen, s - min, max - min);
  }

  /** Between an end without end and any other there is no end either. */
  private static long endless(long closed, long open, boolean atClosed, boolean atOpen) {
    if (atClosed) {
      return closed;
    }
    return atOpen || Length.isBounded(closed) ? open : closed;
  }

  private static long floorShare(long change, long part, long whole) {
    if (change == 0 || part == 0) {
      return 0;
    }
    if (part == whole) {
      return change;
    }
    BigInteger[] qr =
        BigInteger.valueOf(change)
            .multiply(BigInteger.valueOf(part))
            .divideAndRemainder(BigInteger.valueOf(whole));
    return qr[0].longValueExact() - (qr[1].signum() < 0 ? 1 : 0);
  }
}
