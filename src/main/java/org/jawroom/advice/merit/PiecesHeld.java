package org.jawroom.advice.merit;

import java.util.List;
import org.jawroom.placement.job.JobOutcome;
import org.jawroom.shop.Shop;

/** How many pieces each pairing of a shop holds: the quantities of the jobs held, added up. */
public final class PiecesHeld {

  private final long[] ofPairings;

  private PiecesHeld(long[] ofPairings) {
    this.ofPairings = ofPairings;
  }

  /**
   * Adds up the pieces.
   *
   * @param jobs one outcome for each job and pairing: jobs, then machines, then vises; none: no
   *     pairing holds a piece
   */
  public static PiecesHeld of(Shop shop, List<JobOutcome> jobs) {
    int pairings = jobs.isEmpty() ? 0 : shop.machines().size() * shop.vises().size();
    long[] held = new long[pairings];
    for (int index = 0; index < jobs.size(); index++) {
      JobOutcome outcome = jobs.get(index);
      held[index % pairings] += outcome.isHeld() ? outcome.job().quantity() : 0;
    }
    return new PiecesHeld(held);
  }

  /** The pieces held by the pairing with that index: machines, then vises. */
  public long by(long pairing) {
    return ofPairings.length == 0 ? 0 : ofPairings[(int) pairing];
  }
}
