package org.jawroom.advice;

/** How an unknown dimension must stand to its limit for the pairing to fit. */
public enum Relation {
  AT_LEAST(">="),
  AT_MOST("<="),
  /** It fits whatever the dimension is. */
  ALWAYS("any"),
  /** It cannot fit whatever the dimension is. */
  NEVER("never");

  private final String code;

  Relation(String code) {
    this.code = code;
  }

  /** As {@code unknowns.csv} tells it. */
  public String code() {
    return code;
  }
}
