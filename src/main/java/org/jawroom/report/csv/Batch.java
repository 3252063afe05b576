package org.jawroom.report.csv;

import java.util.List;
import org.jawroom.advice.Advice;

/** A batch of pairings with those parts of their reports that can be formatted independently. */
public final class Batch {
  private final List<Advice> advice;
  private final byte[] pairings;

  /** May be called on any thread. */
  public Batch(List<Advice> advice) {
    this.advice = List.copyOf(advice);
    this.pairings = PairingsCsv.rows(advice);
  }

  /** The pairings, in order. */
  public List<Advice> advice() {
    return advice;
  }

  /** Their rows of {@code pairings.csv}. */
  public byte[] pairings() {
    return pairings;
  }
}
