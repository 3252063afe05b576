package org.jawroom.report.csv;

import java.io.IOException;
import java.io.OutputStream;
import org.jawroom.advice.Advice;
import org.jawroom.report.tally.Totals;
import org.jawroom.shop.Shop;

/** {@code pairings.csv} alone, written somewhere else than into a file. */
public final class PairingsStream {
  private final OutputStream out;
  private final Totals totals;

  /**
   * Begins it; {@code out} is left open.
   *
   * @param header whether with one
   */
  public PairingsStream(OutputStream out, Shop shop, boolean header) throws IOException {
    this.out = out;
    this.totals = new Totals(shop);
    if (header) {
      out.write(PairingsCsv.header());
    }
  }

  /** Writes the next pairings, machines then vises in the order of the shop. */
  public void add(Batch batch) throws IOException {
    out.write(batch.pairings());
    for (Advice pairing : batch.advice()) {
      totals.add(pairing);
    }
  }

  /** What is told of the shop as a whole, so far. */
  public Totals totals() {
    return totals;
  }
}
