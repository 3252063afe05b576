package org.jawroom.shop.machine;

/** A side of the table, as the operator stands before it. */
public enum Side {
  FRONT,
  REAR,
  LEFT,
  RIGHT;

  public String word() {
    return name().toLowerCase(java.util.Locale.ROOT);
  }
}
