package org.jawroom.shop;

import java.math.BigDecimal;
import java.util.Optional;

/** Checks shared by the compact constructors; a failure is a bug of the caller. */
final class Check {
  private Check() {}

  static void notNegative(String what, long length) {
    if (length < 0) {
      throw new IllegalArgumentException(what + " is negative: " + length);
    }
  }

  static void notNegative(String what, Dimension dimension) {
    if (dimension.isKnown()) {
      notNegative(what, dimension.length());
    }
  }

  static void named(String what, String name) {
    if (name.isBlank()) {
      throw new IllegalArgumentException(what + " has no name");
    }
  }

  static void price(Optional<BigDecimal> price) {
    if (price.isPresent() && price.get().signum() <= 0) {
      throw new IllegalArgumentException("price is not positive: " + price.get());
    }
  }
}
