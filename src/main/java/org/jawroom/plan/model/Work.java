package org.jawroom.plan.model;

import java.util.Set;

/**
 * A job.
 *
 * @param quantity its weight, at least 1
 * @param heldBy the pairings that hold it, each a {@link Fit} of the cell; may be empty
 */
public record Work(String name, int quantity, Set<Pick> heldBy) {
  public Work {
    heldBy = Set.copyOf(heldBy);
    if (quantity < 1) {
      throw new IllegalArgumentException("job quantity below 1: " + name);
    }
  }
}
