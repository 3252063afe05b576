package org.jawroom.report.csv;

import java.util.List;
import org.jawroom.advice.Advice;

/** Some pairings, and of their reports what can be written apart from that of others. */
public final class Batch {
  private final List<Advice> advice;
  private final byte[] pairings;

  /** May be made on any thread. */
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
