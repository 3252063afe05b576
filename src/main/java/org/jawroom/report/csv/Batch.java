package org.jawroom.report.csv;

import java.util.List;
import org.jawroom.advice.Advice;
import org.jawroom.placement.job.JobOutcome;
import org.jawroom.report.wording.Shown;

/** Consecutive vises on one machine, with what the reports show of each. */
public final class Batch {
  private final List<Advice> advice;
  private final List<Shown> shown;
  private final byte[] pairings;
  private final List<byte[]> jobs;

  /**
   * May be called on any thread.
   *
   * @param ofJobs for each pairing the outcome of each job, in order
   * @param keep whether the outcomes are needed later: they take far more memory than the rest
   */
  public Batch(List<Advice> advice, List<List<JobOutcome>> ofJobs, boolean keep) {
    this.advice = keep ? List.copyOf(advice) : List.of();
    this.shown = advice.stream().map(pairing -> Shown.of(pairing.outcome())).toList();
    this.pairings = PairingsCsv.rows(advice);
    this.jobs = JobsCsv.rows(ofJobs);
  }

  /** The pairings, in order; empty if they are not kept. */
  public List<Advice> advice() {
    return advice;
  }

  /** What a cell shows of each pairing, in order. */
  public List<Shown> shown() {
    return shown;
  }

  /** Their rows of {@code pairings.csv}. */
  public byte[] pairings() {
    return pairings;
  }

  /** For each job their rows of {@code jobs.csv}. */
  public List<byte[]> jobs() {
    return jobs;
  }
}
