package org.jawroom.clearance.gap;

/** Which end of the opening range yields a swept edge. */
public enum JawEnd {
  CLOSED,
  OPEN,
  /** The edge does not depend on the opening. */
  ANY;

  public String word() {
    return name().toLowerCase(java.util.Locale.ROOT);
  }
}
