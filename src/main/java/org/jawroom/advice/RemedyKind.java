package org.jawroom.advice;

/**
 * The kinds of change that can make a pairing fit, in the order of effort in which people see them.
 */
public enum RemedyKind {
  /** A handle that stays on while cutting is taken off. */
  HANDLE_OFF("handle off", false),
  /** A handle that asks for a full turn is worked over its upper half. */
  UPPER_SWING("upper swing", false),
  /** A turn that the vise's or the machine's turns do not allow. */
  TURN("turn", false),
  /** While cutting, the travel is cut at the end where the table stands toward the front. */
  TRAVEL_FRONT("travel, table front", true),
  TRAVEL_BACK("travel, table back", true),
  TRAVEL_LEFT("travel, table left", true),
  TRAVEL_RIGHT("travel, table right", true),
  /** Strap clamps instead of its bolts, anywhere on the table. */
  CLAMPS("clamps", false),
  /** A bolted riser plate under the vise. */
  RAISE("raise", true),
  /** One guard stands farther off; its name follows. */
  MOVE("move", true),
  /** Less clearance is required everywhere: told last, apart, and with a caution. */
  CLEARANCE("clearance", true);

  private final String code;
  private final boolean measured;

  RemedyKind(String code, boolean measured) {
    this.code = code;
    this.measured = measured;
  }

  /** The name in {@code remedies.csv}; {@link #MOVE} goes on with the guard's name. */
  public String code() {
    return code;
  }

  /** Whether it has an amount. */
  public boolean isMeasured() {
    return measured;
  }
}
