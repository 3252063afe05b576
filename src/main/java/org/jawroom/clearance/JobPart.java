package org.jawroom.clearance;

import java.util.ArrayList;
import java.util.List;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.OpeningInterval;
import org.jawroom.shop.Job;
import org.jawroom.shop.Vise;

/**
 * The part of a job as a part of the vise that holds it: between the jaws, from the bed or the grip
 * up, in both situations.
 *
 * <p>While the jaws go the play further to let it in it stays where they grip it. It stands as the
 * vise does, so it is off by the vise's tolerance; the table of jobs has none of its own.
 */
public final class JobPart {

  private JobPart() {}

  /** One for each situation. */
  public static List<Part> of(Vise vise, Job job) {
    List<Part> parts = new ArrayList<>();
    for (Situation situation : Situation.values()) {
      parts.add(
          Part.of(
              PartRole.WORK,
              situation,
              OpeningInterval.constant(across(vise, job), vise.opening()),
              along(job),
              heights(vise, job),
              vise.provenance().tolerance()));
    }
    return parts;
  }

  /** Its u limits: against the fixed jaw, or about the middle where both jaws move. */
  public static Interval across(Vise vise, Job job) {
    return vise.jaws().both() ? Interval.around(0, job.width() / 2) : Interval.of(0, job.width());
  }

  /** Its v limits. */
  public static Interval along(Job job) {
    return Interval.around(0, job.length() / 2);
  }

  /**
   * Its underside and top above the table. A grip deeper than the jaws are high would put it into
   * the bed, which no part does: it then stands on the bed.
   */
  public static Interval heights(Vise vise, Job job) {
    long bed = vise.base().bedHeight();
    long underside =
        job.grip().isPresent() ? Math.max(bed, vise.top() - job.grip().getAsLong()) : bed;
    return Interval.of(underside, underside + job.height());
  }
}
