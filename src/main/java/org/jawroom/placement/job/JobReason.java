package org.jawroom.placement.job;

/** Why a job is not held, in the order in which reports list reasons. */
public enum JobReason {
  /** The job's {@code machines} do not include this one. */
  MACHINE("machine"),
  /** part_width exceeds opening_max; short by the difference. */
  TOO_WIDE("too wide"),
  /** part_width is below opening_min; short by the difference. */
  TOO_NARROW("too narrow"),
  /** The grip is deeper than jaws and plates are high; short by the difference. */
  GRIP("grip"),
  /** No bolts line up in any turn that vise and machine allow, as in a {@code no mount} pairing. */
  MOUNT("mount"),
  /** Bolts line up, but in no turn that sets the jaws along the axis that the job requires. */
  TURN("turn"),
  /**
   * Something is hit at every position; short by the amount by which the best margin is below 0.
   */
  HIT("hit"),
  /**
   * No position with margin ≥ 0 has the whole workpiece within the spindle's reach; short by the
   * least amount by which it protrudes at any of them.
   */
  REACH("reach"),
  /**
   * With the nose at nose_max the longest tool does not clear the top of the workpiece by the
   * required clearance; short by the missing part of it.
   */
  LONG_TOOL("long tool"),
  /**
   * With the nose at nose_min the shortest tool ends above the top of the workpiece; short by the
   * difference.
   */
  SHORT_TOOL("short tool"),
  /** Vise and workpiece together exceed max_load; short by the difference in kg. */
  LOAD("load");

  private final String code;

  JobReason(String code) {
    this.code = code;
  }

  /** The code written to {@code jobs.csv}. */
  public String code() {
    return code;
  }
}
