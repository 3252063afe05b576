package org.jawroom.plan.model;

import java.util.OptionalLong;

/**
 * A kind of vise.
 *
 * @param stock number owned, 0 or more
 * @param price of each additional one, in the smallest coin, at least 1; empty: none can be bought
 */
public record ViseType(String name, int stock, OptionalLong price) {
  public ViseType {
    if (stock < 0) {
      throw new IllegalArgumentException("negative stock: " + name);
    }
    if (price.isPresent() && price.getAsLong() < 1) {
      throw new IllegalArgumentException("price below 1: " + name);
    }
  }
}
