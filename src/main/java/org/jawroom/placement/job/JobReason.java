package org.jawroom.placement.job;

/** Why a job is not held, in the order in which reasons are told. */
public enum JobReason {
  /** The job's {@code machines} do not name this one. */
  MACHINE("machine"),
  /** part_width is more than opening_max; short by the difference. */
  TOO_WIDE("too wide"),
  /** part_width is less than opening_min; short by the difference. */
  TOO_NARROW("too narrow"),
  /** The grip is deeper than the jaws, plates and all, are high; short by the difference. */
  GRIP("grip"),
  /**
   * No bolts line up in any turn that vise and machine allow, as for a pairing that is {@code no
   * mount}.
   */
  MOUNT("mount"),
  /** Bolts line up, but in no turn that has the jaws along the axis that the job asks for. */
  TURN("turn"),
  /** Something is hit at every place; short by as much as the best margin is below 0. */
  HIT("hit"),
  /**
   * No place with margin ≥ 0 has the whole part within the spindle's reach; short by the least that
   * it sticks out at any of them.
   */
  REACH("reach"),
  /**
   * With the nose at nose_max the longest tool does not clear the part's top by the required
   * clearance; short by what is missing of that.
   */
  LONG_TOOL("long tool"),
  /**
   * With the nose at nose_min the shortest tool ends above the part's top; short by the difference.
   */
  SHORT_TOOL("short tool"),
  /** Vise and part together are more than max_load; short by the difference in kg. */
  LOAD("load");

  private final String code;

  JobReason(String code) {
    this.code = code;
  }

  /** The code that {@code jobs.csv} bears. */
  public String code() {
    return code;
  }

  /** Whether there is no place to look for where this fails: no opening, no turn, or no leave. */
  boolean barsPlaces() {
    return compareTo(TURN) <= 0;
  }
}
