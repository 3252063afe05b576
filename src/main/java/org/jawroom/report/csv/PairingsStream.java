package org.jawroom.report.csv;

import java.io.IOException;
import java.io.OutputStream;
import org.jawroom.report.tally.Totals;
import org.jawroom.shop.Shop;

/** {@code pairings.csv} alone, written to a stream instead of a file. */
public final class PairingsStream {
  private final OutputStream out;
  private final Totals totals;

  /**
   * Starts the output; does not close {@code out}.
   *
   * @param header whether to write the header row
   */
  public PairingsStream(OutputStream out, Shop shop, boolean header) throws IOException {
    this.out = out;
    this.totals = new Totals(shop, false);
    if (header) {
      out.write(PairingsCsv.header());
    }
  }

  /** Writes the next pairings: machines, then vises, in shop order. */
  public void add(Batch batch) throws IOException {
    out.write(batch.pairings());
    batch.addTo(totals);
  }

  /** Returns the totals over the pairings written so far. */
  public Totals totals() {
    return totals;
  }
}
