package org.jawroom.plan.model;

import java.util.List;

/**
 * A job that the plan does not hold, and its remedy.
 *
 * @param job its index in the cell's list
 * @param purchases for {@link Remedy#BUY}: the cheapest purchases besides those of the plan with
 *     which this job and every job that the plan holds can be held; ties go to the fewest things,
 *     then to what is first in the tables
 * @param cost of the purchases, in the smallest coin; 0 is possible only if the plan is not proven
 * @param proven whether nothing cheaper would do; for {@link Remedy#NOTHING_ON_SALE}, whether that
 *     is certain
 */
public record Unheld(int job, Remedy remedy, List<Purchase> purchases, long cost, boolean proven) {

  /** What can be done about a job that is not held. */
  public enum Remedy {
    /** No pairing in the cell holds it, bought or not. */
    NOTHING_HOLDS,
    /** A purchase makes it possible. */
    BUY,
    /**
     * Some pairing holds it, but no purchase lets it be held together with all jobs held already.
     */
    NOTHING_ON_SALE,
    /** Time ran out before the search. */
    NOT_SOUGHT
  }

  public Unheld {
    purchases = List.copyOf(purchases);
  }
}
