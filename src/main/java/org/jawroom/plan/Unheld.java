package org.jawroom.plan;

import java.util.List;

/**
 * A job the plan leaves, and what would hold it as well.
 *
 * @param job its place in the cell's list
 * @param purchases for {@link Remedy#BUY}: the cheapest beside those of the plan with which every
 *     job that the plan holds, and this one, can be held; of equally cheap ones the fewest things,
 *     then what stands first in the tables
 * @param cost what they come to, in the smallest coin; may be 0 only where the plan was not proven
 * @param proven whether nothing cheaper would do; for {@link Remedy#NOTHING_ON_SALE}, whether that
 *     is sure
 */
public record Unheld(int job, Remedy remedy, List<Purchase> purchases, long cost, boolean proven) {

  /** What there is to be done about a job that is not held. */
  public enum Remedy {
    /** No pairing in the cell holds it, bought or not. */
    NOTHING_HOLDS,
    /** Something for sale would do. */
    BUY,
    /** Something holds it, but not beside all that is held already, whatever is bought. */
    NOTHING_ON_SALE,
    /** Time ran out before it was looked for. */
    NOT_SOUGHT
  }

  public Unheld {
    purchases = List.copyOf(purchases);
  }
}
