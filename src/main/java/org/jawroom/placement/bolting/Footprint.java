package org.jawroom.placement.bolting;

import java.util.Optional;
import java.util.OptionalLong;
import org.jawroom.clearance.Certainty;
import org.jawroom.clearance.part.ClampParts;
import org.jawroom.clearance.part.JobPart;
import org.jawroom.geometry.Ends;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Orientation;
import org.jawroom.geometry.Rectangle;
import org.jawroom.shop.Job;
import org.jawroom.shop.vise.Base;
import org.jawroom.shop.vise.Vise;

/** Rectangles that a vise covers in the table plane while standing at the origin. */
public final class Footprint {
  private Footprint() {}

  /**
   * The base of a simple vise, as far as any value of its readings takes it; empty for a vise of
   * shape parts or if a column it needs is blank.
   */
  static Optional<Rectangle> base(Vise vise, Orientation turn) {
    Base base = vise.base();
    return base.width().isBlank() || isBlankAlongU(base)
        ? Optional.empty()
        : base(vise, turn, Certainty.AT_WORST);
  }

  /**
   * The base of a simple vise as far as any value of its readings takes it, a blank one farther
   * than any table, or as far as all values do. Empty for a vise of shape parts, and at best if a
   * column it needs is blank or the values have nothing in common.
   */
  static Optional<Rectangle> base(Vise vise, Orientation turn, Certainty certainty) {
    Base base = vise.base();
    boolean isBlank = base.width().isBlank() || isBlankAlongU(base);
    if (!vise.simple() || isBlank && certainty == Certainty.AT_BEST) {
      return Optional.empty();
    }
    Ends u = ClampParts.alongU(vise, certainty);
    long half = certainty.size(Certainty.sizes(base.width())) / 2;
    return u.isReversed()
        ? Optional.empty()
        : Optional.of(rectangle(Interval.of(u.lo(), u.hi()), Interval.around(0, half), turn));
  }

  private static boolean isBlankAlongU(Base base) {
    return base.rearReach().isBlank() || base.frontReach().isBlank();
  }

  private static Rectangle rectangle(Interval u, Interval v, Orientation turn) {
    return new Rectangle(turn.x(u, v), turn.y(u, v));
  }

  /**
   * The base of a simple vise along u, from end to end, as far as any value takes it; empty for a
   * vise of shape parts or where a blank leaves an end open. The width does not matter.
   */
  public static Optional<Interval> baseAlongU(Vise vise) {
    if (!vise.simple() || isBlankAlongU(vise.base())) {
      return Optional.empty();
    }
    Ends u = ClampParts.alongU(vise, Certainty.AT_WORST);
    return Optional.of(Interval.of(u.lo(), u.hi()));
  }

  /**
   * The least length of the base of a simple vise along u that any value of its readings leaves;
   * empty where {@link #baseAlongU} is.
   */
  public static OptionalLong leastLength(Vise vise) {
    return !vise.simple() || isBlankAlongU(vise.base())
        ? OptionalLong.empty()
        : OptionalLong.of(
            Certainty.sizes(vise.base().rearReach()).lo()
                + Certainty.sizes(vise.base().frontReach()).lo());
  }

  /** The work area: between the jaws at their widest, as wide as the jaws. */
  public static Rectangle workArea(Vise vise, Orientation turn) {
    long widest = vise.opening().hi();
    Interval u = vise.jaws().both() ? Interval.around(0, widest / 2) : Interval.of(0, widest);
    return work(vise, u, Interval.around(0, vise.jaws().width() / 2), turn);
  }

  /** The work area of a job: its workpiece between the jaws. */
  public static Rectangle part(Vise vise, Job job, Orientation turn) {
    return work(vise, JobPart.across(vise, job), JobPart.along(job), turn);
  }

  /** What lies between the jaws; turned on a swivel base, the rectangle that holds it. */
  private static Rectangle work(Vise vise, Interval u, Interval v, Orientation turn) {
    return vise.swivel()
        .map(swivel -> swivel.turned(new Rectangle(u, v)).hull())
        .map(hull -> rectangle(hull.x(), hull.y(), turn))
        .orElseGet(() -> rectangle(u, v, turn));
  }
}
