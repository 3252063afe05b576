package org.jawroom.advice.remedy;

/** The direction in which a guard is moved. */
public enum Direction {
  LEFT,
  RIGHT,
  FRONT,
  REAR,
  UP;

  public String word() {
    return name().toLowerCase(java.util.Locale.ROOT);
  }
}
