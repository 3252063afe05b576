package org.jawroom.report.tally;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.jawroom.placement.pairing.Outcome;

/** The pairings with the largest shortfall, worst first; of equals the first. */
public final class Worst {

  /** How many of them are kept. */
  static final int KEPT = 5;

  private final List<Outcome> kept = new ArrayList<>();
  private long missed;

  void add(Outcome outcome) {
    long margin = outcome.margin().orElse(0);
    if (margin >= 0) {
      return;
    }
    missed++;
    int at = kept.size();
    while (at > 0 && kept.get(at - 1).margin().getAsLong() > margin) {
      at--;
    }
    if (at < KEPT) {
      kept.add(at, outcome);
      if (kept.size() > KEPT) {
        kept.remove(KEPT);
      }
    }
  }

  public List<Outcome> kept() {
    return Collections.unmodifiableList(kept);
  }

  /** The number of pairings with a shortfall. */
  public long missed() {
    return missed;
  }
}
