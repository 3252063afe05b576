package org.jawroom.report.tally;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import org.jawroom.placement.pairing.Outcome;

/**
 * The pairings whose bed the shortest tool does not clear, in words; of very many only the first.
 */
public final class ShortTools {
  private static final int KEPT = 20_000;

  /** The names of a pairing. */
  private record Names(String machine, String vise) {}

  private final TreeMap<Long, Names> kept = new TreeMap<>();
  private long more;

  /** Adds the pairing with that index, in any order. */
  public void add(long index, Outcome outcome) {
    if (outcome.shortestToolTooShort()) {
      keep(index, new Names(outcome.machine().name(), outcome.vise().name()));
    }
  }

  /** Adds those of other pairings of the same shop. */
  void add(ShortTools others) {
    others.kept.forEach(this::keep);
    more += others.more;
  }

  private void keep(long index, Names names) {
    if (kept.size() == KEPT && index > kept.lastKey()) {
      more++;
      return;
    }
    kept.put(index, names);
    if (kept.size() > KEPT) {
      kept.pollLastEntry();
      more++;
    }
  }

  /** One line for each, in the order of their indices, and one for the rest. */
  public List<String> lines() {
    List<String> lines = new ArrayList<>();
    for (Names names : kept.values()) {
      lines.add(
          names.machine()
              + " × "
              + names.vise()
              + ": the shortest tool does not clear the vise's bed with the nose at its highest; the"
              + " nose is taken to stand there");
    }
    if (more > 0) {
      lines.add("the shortest tool does not clear the bed in " + more + " more pairings");
    }
    return lines;
  }
}
