package org.jawroom.advice.blank;

/** How an unknown dimension must relate to its limit for the pairing to fit. */
public enum Relation {
  AT_LEAST(">="),
  AT_MOST("<="),
  /** It fits whatever the value is. */
  ALWAYS("any"),
  /** It cannot fit whatever the value is. */
  NEVER("never");

  private final String code;

  Relation(String code) {
    this.code = code;
  }

  /** The code written to {@code unknowns.csv}. */
  public String code() {
    return code;
  }
}
