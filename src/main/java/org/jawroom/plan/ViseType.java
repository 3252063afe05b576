package org.jawroom.plan;

import java.util.OptionalLong;

/**
 * A kind of vise.
 *
 * @param stock how many are in the house, 0 or more
 * @param price in the smallest coin, at least 1, for each one more; empty: no more can be had
 */
public record ViseType(String name, int stock, OptionalLong price) {
  public ViseType {
    if (stock < 0) {
      throw new IllegalArgumentException("less than none in stock: " + name);
    }
    if (price.isPresent() && price.getAsLong() < 1) {
      throw new IllegalArgumentException("what is for sale costs something: " + name);
    }
  }
}
