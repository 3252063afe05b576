package org.jawroom.advice;

/** Which way a guard is moved. */
public enum Way {
  LEFT,
  RIGHT,
  FRONT,
  REAR,
  UP;

  public String word() {
    return name().toLowerCase(java.util.Locale.ROOT);
  }
}
