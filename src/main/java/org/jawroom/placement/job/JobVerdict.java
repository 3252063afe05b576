package org.jawroom.placement.job;

/** What is said of a job on a machine with a vise. */
public enum JobVerdict {
  /** Some place has margin ≥ 0 and everything else that a job asks for. */
  HELD("held"),
  /** Something fails for certain. */
  NOT_HELD("not held"),
  /** Nothing fails for certain, but something that decides it is blank. */
  UNKNOWN("unknown");

  private final String code;

  JobVerdict(String code) {
    this.code = code;
  }

  /** The code that {@code jobs.csv} bears. */
  public String code() {
    return code;
  }
}
