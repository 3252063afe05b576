package org.jawroom.plan.model;

import java.util.OptionalInt;
import java.util.OptionalLong;

/**
 * A kind of vise, or another form of one.
 *
 * @param stock number owned, 0 or more
 * @param price of each additional one, in the smallest coin, at least 1; empty: none can be bought
 * @param formOf the index of the kind of which it is another form, the same piece of iron turned;
 *     it then shares stock and price of that kind and has none of its own
 */
public record ViseType(String name, int stock, OptionalLong price, OptionalInt formOf) {
  public ViseType {
    if (stock < 0) {
      throw new IllegalArgumentException("negative stock: " + name);
    }
    if (price.isPresent() && price.getAsLong() < 1) {
      throw new IllegalArgumentException("price below 1: " + name);
    }
    if (formOf.isPresent() && (stock > 0 || price.isPresent())) {
      throw new IllegalArgumentException("another form has no stock or price: " + name);
    }
  }

  /** A kind of its own. */
  public ViseType(String name, int stock, OptionalLong price) {
    this(name, stock, price, OptionalInt.empty());
  }
}
