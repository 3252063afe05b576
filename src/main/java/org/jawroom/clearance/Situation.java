package org.jawroom.clearance;

import java.util.Locale;
import org.jawroom.shop.value.When;

/** The situations in which guards and parts are compared. */
public enum Situation {
  /** The axes anywhere in their travel, the door closed. */
  CUTTING,
  /** The axes at the load position, the door open, the nose up. */
  LOADING;

  private final String word = name().toLowerCase(Locale.ROOT);

  /** Whether something marked {@code when} counts in this situation. */
  public boolean counts(When when) {
    return this == CUTTING ? when.countsWhileCutting() : when.countsWhileLoading();
  }

  public String word() {
    return word;
  }
}
