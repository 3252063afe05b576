package org.jawroom.advice.remedy;

/**
 * The kinds of change that can make a pairing fit, in order of effort, which is the order in
 * reports.
 */
public enum RemedyKind {
  /** A handle that stays on while cutting is taken off. */
  HANDLE_OFF("handle off", false),
  /** A handle that needs a full turn is worked over its upper half. */
  UPPER_SWING("upper swing", false),
  /** A turn that the vise's or the machine's turns do not allow. */
  TURN("turn", false),
  /** While cutting, stops shorten the travel at the end where the table stands toward the front. */
  TRAVEL_FRONT("travel, table front", true),
  TRAVEL_BACK("travel, table back", true),
  TRAVEL_LEFT("travel, table left", true),
  TRAVEL_RIGHT("travel, table right", true),
  /** A bolted riser plate under the vise. */
  RAISE("raise", true),
  /** One guard stands farther off; its name is appended. */
  MOVE("move", true),
  /** Less clearance is required everywhere; reports show it last, apart, and with a caution. */
  CLEARANCE("clearance", true);

  private final String code;
  private final boolean measured;

  RemedyKind(String code, boolean measured) {
    this.code = code;
    this.measured = measured;
  }

  /** The name in {@code remedies.csv}; {@link #MOVE} is followed by the guard's name. */
  public String code() {
    return code;
  }

  /** The rank by effort, least first; the same for the four ends of travel. */
  public int effort() {
    boolean isTravel = TRAVEL_FRONT.ordinal() <= ordinal() && ordinal() <= TRAVEL_RIGHT.ordinal();
    return isTravel ? TRAVEL_FRONT.ordinal() : ordinal();
  }

  /** Whether it has an amount. */
  public boolean isMeasured() {
    return measured;
  }
}
