package org.jawroom.clearance.gap;

import java.util.Locale;

/** Which end of the opening range yields a swept edge. */
public enum JawEnd {
  CLOSED,
  OPEN,
  /** The edge does not depend on the opening. */
  ANY;

  private final String word = name().toLowerCase(Locale.ROOT);

  public String word() {
    return word;
  }
}
