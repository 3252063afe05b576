package org.jawroom.report.tally;

import java.util.ArrayList;
import java.util.List;
import org.jawroom.placement.pairing.Outcome;

/** The pairings with the largest shortfall, worst first; of equals the one of the lowest index. */
public final class Worst {

  /** How many of them are kept. */
  static final int KEPT = 5;

  /** A pairing that misses. */
  private record Missed(long index, long margin, Outcome outcome) {
    boolean isBefore(Missed other) {
      return margin != other.margin ? margin < other.margin : index < other.index;
    }
  }

  private final List<Missed> kept = new ArrayList<>();
  private long missed;

  /** Adds the pairing with that index, in any order. */
  void add(long index, Outcome outcome) {
    long margin = outcome.margin().orElse(0);
    if (margin < 0) {
      missed++;
      keep(new Missed(index, margin, outcome));
    }
  }

  /** Adds those of other pairings of the same shop. */
  void add(Worst others) {
    missed += others.missed;
    others.kept.forEach(this::keep);
  }

  private void keep(Missed next) {
    int at = kept.size();
    while (at > 0 && next.isBefore(kept.get(at - 1))) {
      at--;
    }
    if (at < KEPT) {
      kept.add(at, next);
      if (kept.size() > KEPT) {
        kept.remove(KEPT);
      }
    }
  }

  public List<Outcome> kept() {
    return kept.stream().map(Missed::outcome).toList();
  }

  /** The number of pairings with a shortfall. */
  public long missed() {
    return missed;
  }
}
