package org.jawroom.placement.job;

/** A requirement of a job that a blank leaves unchecked; it makes no job unknown. */
public enum Unchecked {
  /** The tool's height, for want of tool_length, nose_max or, with a shortest tool, nose_min. */
  TOOL("tool"),
  /** The load on the table, for want of a mass or of max_load. */
  LOAD("load");

  private final String code;

  Unchecked(String code) {
    this.code = code;
  }

  /** The word written to {@code jobs.csv}. */
  public String code() {
    return code;
  }
}
