package org.jawroom.report.tally;

import java.util.List;
import java.util.Optional;
import org.jawroom.advice.merit.JobMerit;
import org.jawroom.placement.job.JobOutcome;
import org.jawroom.placement.job.JobReason;
import org.jawroom.placement.job.JobVerdict;
import org.jawroom.report.wording.Finding;
import org.jawroom.report.wording.JobWords;
import org.jawroom.shop.Settings;

/** Counts over the outcomes of one job, added one by one, and the best of them. */
public final class JobTally {
  private int total;
  private int held;
  private int unknown;
  private int barred;
  private boolean plain;
  private boolean checked;
  private boolean sure;
  private JobOutcome best;
  private JobOutcome nearest;

  /** Adds the next outcome; of equally good ones the first is the best. */
  void add(JobOutcome next) {
    total++;
    if (next.verdict() == JobVerdict.UNKNOWN) {
      unknown++;
    } else if (next.isHeld()) {
      held++;
      plain |= Finding.ofHeld(next) == Finding.FITS;
      sure |= next.inDoubt().isEmpty();
      checked |= next.unchecked().isEmpty() && next.inDoubt().isEmpty();
    } else if (next.shortfalls().get(0).reason() == JobReason.MACHINE) {
      barred++;
    }
  }

  /** The same, and keeps it if it is the best or, not held, the nearest to being held so far. */
  void keep(Settings settings, JobOutcome next) {
    add(next);
    if (next.isHeld()) {
      keepBest(settings, next);
    } else if (!next.shortfalls().isEmpty()) {
      keepNearest(next);
    }
  }

  /**
   * Adds the outcomes of another tally.
   *
   * @param best whether to keep the best and the nearest of them, too; of equals the first stays
   */
  void add(Settings settings, JobTally others, boolean best) {
    total += others.total;
    held += others.held;
    unknown += others.unknown;
    barred += others.barred;
    plain |= others.plain;
    checked |= others.checked;
    sure |= others.sure;
    if (best) {
      others.best().ifPresent(next -> keepBest(settings, next));
      others.nearest().ifPresent(this::keepNearest);
    }
  }

  private void keepBest(Settings settings, JobOutcome next) {
    best = best == null ? next : JobMerit.best(settings, List.of(best, next)).orElseThrow();
  }

  private void keepNearest(JobOutcome next) {
    nearest = nearest == null ? next : JobWords.nearest(List.of(nearest, next)).orElseThrow();
  }

  public int total() {
    return total;
  }

  public int held() {
    return held;
  }

  public int unknown() {
    return unknown;
  }

  /** Whether the planner has barred the job from all of these pairings. */
  public boolean isBarred() {
    return total > 0 && barred == total;
  }

  /** What is shown of them: of those kept the best counts, of others whether one is plain. */
  public Finding finding() {
    if (best != null) {
      return Finding.ofHeld(best);
    }
    if (held > 0) {
      return plain ? Finding.FITS : Finding.FITS_BUT;
    }
    if (isBarred()) {
      return Finding.NO_MOUNT;
    }
    return unknown > 0 ? Finding.UNKNOWN : Finding.NO_PLACE;
  }

  /** Whether it is held, but wherever it is a reading is in doubt. */
  public boolean isHeldInDoubt() {
    return held > 0 && !sure;
  }

  /**
   * Whether it is held, but a blank, or else a doubt, leaves something unchecked wherever it is.
   */
  public boolean isHeldUnchecked() {
    return held > 0 && !checked;
  }

  /** The best of those kept that are held. */
  public Optional<JobOutcome> best() {
    return Optional.ofNullable(best);
  }

  /** Of those kept that are not held, the nearest to being held. */
  public Optional<JobOutcome> nearest() {
    return Optional.ofNullable(nearest);
  }
}
