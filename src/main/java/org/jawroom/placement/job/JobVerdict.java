package org.jawroom.placement.job;

/** The verdict on a job on a machine with a vise. */
public enum JobVerdict {
  /** Some position has margin ≥ 0, and every other requirement of the job is met. */
  HELD("held"),
  /** Something fails for certain. */
  NOT_HELD("not held"),
  /** Nothing fails for certain, but a column that decides it is blank. */
  UNKNOWN("unknown");

  private final String code;

  JobVerdict(String code) {
    this.code = code;
  }

  /** The code written to {@code jobs.csv}. */
  public String code() {
    return code;
  }
}
