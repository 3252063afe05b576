package org.jawroom.report.csv;

import java.io.IOException;
import java.io.OutputStream;
import org.jawroom.report.tally.Totals;
import org.jawroom.shop.Shop;

/** {@code pairings.csv} alone, written to a stream instead of a file. */
public final class PairingsStream {
  private final OutputStream out;
  private final ShopOrder order;
  private final Totals totals;

  /**
   * Starts the output; does not close {@code out}.
   *
   * @param header whether to write the header row
   */
  public PairingsStream(OutputStream out, Shop shop, boolean header) throws IOException {
    this.out = out;
    this.order = new ShopOrder(shop);
    this.totals = new Totals(shop, false);
    if (header) {
      out.write(PairingsCsv.header());
    }
  }

  /** Adds the next block, in the order of {@link ShopOrder}. */
  public void add(SolvedBlock solved) throws IOException {
    totals.add(solved.totals());
    for (Batch batch : order.next(solved)) {
      out.write(batch.pairings());
    }
  }

  /** Returns the totals over the pairings added so far. */
  public Totals totals() {
    return totals;
  }
}
