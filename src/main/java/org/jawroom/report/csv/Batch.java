package org.jawroom.report.csv;

import java.util.List;
import org.jawroom.advice.Advice;
import org.jawroom.placement.job.JobOutcome;
import org.jawroom.report.tally.Totals;

/** A batch of pairings with those parts of their reports that can be formatted independently. */
public final class Batch {
  private final List<Advice> advice;
  private final List<List<JobOutcome>> ofJobs;
  private final byte[] pairings;
  private final List<byte[]> jobs;

  /**
   * May be called on any thread.
   *
   * @param ofJobs for each pairing the outcome of each job, in order
   */
  public Batch(List<Advice> advice, List<List<JobOutcome>> ofJobs) {
    this.advice = List.copyOf(advice);
    this.ofJobs = List.copyOf(ofJobs);
    this.pairings = PairingsCsv.rows(advice);
    this.jobs = JobsCsv.rows(ofJobs);
  }

  /** The pairings, in order. */
  public List<Advice> advice() {
    return advice;
  }

  /** Their rows of {@code pairings.csv}. */
  public byte[] pairings() {
    return pairings;
  }

  /** For each job their rows of {@code jobs.csv}. */
  public List<byte[]> jobs() {
    return jobs;
  }

  /** Adds the pairings to totals over those before. */
  public void addTo(Totals totals) {
    for (int i = 0; i < advice.size(); i++) {
      totals.add(advice.get(i), ofJobs.get(i));
    }
  }
}
