package org.jawroom.app.run;

import java.util.ArrayList;
import java.util.List;
import org.jawroom.placement.pairing.Outcome;

/**
 * The pairings whose bed the shortest tool does not clear, in words; of very many only the first.
 */
final class ShortTools {
  private static final int KEPT = 20_000;

  private final List<String> kept = new ArrayList<>();
  private long more;

  void add(Outcome outcome) {
    if (!outcome.shortestToolTooShort()) {
      return;
    }
    if (kept.size() == KEPT) {
      more++;
      return;
    }
    kept.add(
        outcome.machine().name()
            + " × "
            + outcome.vise().name()
            + ": the shortest tool does not clear the vise's bed with the nose at its highest; the"
            + " nose is taken to stand there");
  }

  /** One line for each, and one for the rest. */
  List<String> lines() {
    List<String> lines = new ArrayList<>(kept);
    if (more > 0) {
      lines.add("the shortest tool does not clear the bed in " + more + " more pairings");
    }
    return lines;
  }
}
