package org.jawroom.clearance.part;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.jawroom.clearance.Situation;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.OpeningInterval;
import org.jawroom.shop.Job;
import org.jawroom.shop.vise.Vise;

/**
 * The workpiece of a job as a part of the vise that holds it: between the jaws, from the bed or the
 * grip upward, in both situations.
 *
 * <p>While the jaws open by {@code jaw_play} to let it in, the work stays where it is gripped. It
 * is located by the vise and therefore takes the vise's tolerance; the jobs table has no tolerance.
 */
public final class JobPart {

  private JobPart() {}

  /** One part per situation. */
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
    return vise.swivel()
        .map(swivel -> parts.stream().flatMap(part -> TurnedParts.strips(part, swivel)).toList())
        .orElse(parts);
  }

  /** Its u limits: against the fixed jaw, or centred where both jaws move. */
  public static Interval across(Vise vise, Job job) {
    return vise.jaws().both() ? Interval.around(0, job.width() / 2) : Interval.of(0, job.width());
  }

  /** Its v limits. */
  public static Interval along(Job job) {
    return Interval.around(0, job.length() / 2);
  }

  /**
   * The interval from its underside to its top above the table. A grip deeper than the jaws are
   * high would put it into the bed, so the underside is clamped to the bed height.
   */
  public static Interval heights(Vise vise, Job job) {
    long bed = vise.base().bedHeight();
    long underside =
        job.grip().isPresent() ? Math.max(bed, vise.top() - job.grip().getAsLong()) : bed;
    return Interval.of(underside, underside + job.height());
  }

  /** The mass of a solid block of steel of its size, 8 kg/dm³; kg. */
  public static BigDecimal steelMass(Job job) {
    return halfDecimetres(job.length())
        .multiply(halfDecimetres(job.width()))
        .multiply(halfDecimetres(job.height()));
  }

  /** 1 kg of steel is a cube of so much. Few digits where few are needed, they multiply faster. */
  private static BigDecimal halfDecimetres(long length) {
    return length % 1000 == 0
        ? BigDecimal.valueOf(length / 1000, 5)
        : BigDecimal.valueOf(length, 8);
  }
}
