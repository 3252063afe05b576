package org.jawroom.advice.tape;

/** How an open reading decides an unknown pairing. */
public enum Decides {
  /** The pairing can fit from the limit on. */
  FROM(">="),
  /** The pairing can fit up to the limit. */
  UP_TO("<="),
  /** There is no single limit: some values do not let it fit. */
  SOME("some"),
  /** By itself it decides nothing: several open readings decide together. */
  TOGETHER("together");

  private final String code;

  Decides(String code) {
    this.code = code;
  }

  /** The code in files. */
  public String code() {
    return code;
  }
}
