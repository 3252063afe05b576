package org.jawroom.report.csv;

import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import org.jawroom.advice.Advice;
import org.jawroom.placement.job.JobOutcome;
import org.jawroom.report.tally.Totals;
import org.jawroom.shop.Shop;

/** {@code pairings.csv} alone, written to a stream instead of a file. */
public final class PairingsStream {
  private final OutputStream out;
  private final Totals totals;

  /**
   * Starts the output; does not close {@code out}.
   *
   * @param jobs one outcome for each job and pairing: jobs, then machines, then vises
   * @param header whether to write the header row
   */
  public PairingsStream(OutputStream out, Shop shop, List<JobOutcome> jobs, boolean header)
      throws IOException {
    this.out = out;
    this.totals = new Totals(shop, jobs);
    if (header) {
      out.write(PairingsCsv.header());
    }
  }

  /** Writes the next pairings: machines, then vises, in shop order. */
  public void add(Batch batch) throws IOException {
    out.write(batch.pairings());
    for (Advice pairing : batch.advice()) {
      totals.add(pairing);
    }
  }

  /** Returns the totals over the pairings written so far. */
  public Totals totals() {
    return totals;
  }
}
