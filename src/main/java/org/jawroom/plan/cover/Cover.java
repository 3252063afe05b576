package org.jawroom.plan.cover;

import java.util.List;

/**
 * Sets that together hold every element that any set holds.
 *
 * @param sets the sets taken, in rising order
 * @param atLeast how many sets are needed at least; no more than are taken
 * @param unheld the elements that no set holds, in rising order
 */
public record Cover(List<Integer> sets, int atLeast, List<Integer> unheld) {
  public Cover {
    sets = List.copyOf(sets);
    unheld = List.copyOf(unheld);
    if (atLeast > sets.size()) {
      throw new IllegalArgumentException(sets.size() + " sets, but at least " + atLeast);
    }
  }

  /** Whether no cover has fewer sets. */
  public boolean isProven() {
    return atLeast == sets.size();
  }
}
