package org.jawroom.shop.value;

import java.math.BigDecimal;
import java.util.Optional;

/** Checks shared by the compact constructors; a failure is a bug of the caller. */
public final class Require {
  private Require() {}

  public static void notNegative(String what, long length) {
    if (length < 0) {
      throw new IllegalArgumentException(what + " is negative: " + length);
    }
  }

  public static void notNegative(String what, Dimension dimension) {
    if (dimension.isKnown()) {
      notNegative(what, dimension.length());
    }
  }

  public static void named(String what, String name) {
    if (name.isBlank()) {
      throw new IllegalArgumentException(what + " has no name");
    }
  }

  public static void price(Optional<BigDecimal> price) {
    if (price.isPresent() && price.get().signum() <= 0) {
      throw new IllegalArgumentException("price is not positive: " + price.get());
    }
  }
}
