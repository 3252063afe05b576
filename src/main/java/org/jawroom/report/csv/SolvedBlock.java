package org.jawroom.report.csv;

import java.util.List;
import org.jawroom.report.tally.ShopBlock;
import org.jawroom.report.tally.Totals;

/**
 * A block of solved pairings.
 *
 * @param batches one for each of its machines, with all its vises
 * @param totals over the block
 */
public record SolvedBlock(ShopBlock block, List<Batch> batches, Totals totals) {
  public SolvedBlock {
    batches = List.copyOf(batches);
    if (batches.size() != block.machines()) {
      throw new IllegalArgumentException(batches.size() + " batches for " + block);
    }
  }
}
