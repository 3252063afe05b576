package org.jawroom.plan.model;

import java.util.OptionalLong;

/**
 * A machine of the cell.
 *
 * @param price of a candidate that can be bought, in the smallest coin, at least 1; empty: the
 *     machine is owned
 */
public record PlanMachine(String name, OptionalLong price) {
  public PlanMachine {
    if (price.isPresent() && price.getAsLong() < 1) {
      throw new IllegalArgumentException("price below 1: " + name);
    }
  }

  public boolean isOwned() {
    return price.isEmpty();
  }
}
