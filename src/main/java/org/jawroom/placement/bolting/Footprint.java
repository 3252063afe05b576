package org.jawroom.placement.bolting;

import java.util.Optional;
import org.jawroom.clearance.JobPart;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Orientation;
import org.jawroom.geometry.Rectangle;
import org.jawroom.shop.Base;
import org.jawroom.shop.Job;
import org.jawroom.shop.Vise;

/** Rectangles that a vise covers in the table plane while standing at the origin. */
public final class Footprint {
  private Footprint() {}

  /**
   * The base of a simple vise; empty for a vise of shape parts or if a column it needs is blank.
   */
  static Optional<Rectangle> base(Vise vise, Orientation turn) {
    Optional<Interval> length = baseAlongU(vise);
    if (length.isEmpty() || !vise.base().width().isKnown()) {
      return Optional.empty();
    }
    Interval u = length.get();
    Interval v = Interval.around(0, vise.base().width().length() / 2);
    return Optional.of(new Rectangle(turn.x(u, v), turn.y(u, v)));
  }

  /**
   * The base of a simple vise along u, from end to end; empty for a vise of shape parts or where a
   * blank leaves an end open. The width does not matter.
   */
  public static Optional<Interval> baseAlongU(Vise vise) {
    Base base = vise.base();
    return vise.simple() && base.rearReach().isKnown() && base.frontReach().isKnown()
        ? Optional.of(Interval.of(-base.rearReach().length(), base.frontReach().length()))
        : Optional.empty();
  }

  /** The work area: between the jaws at their widest, as wide as the jaws. */
  static Rectangle workArea(Vise vise, Orientation turn) {
    long widest = vise.opening().hi();
    Interval u = vise.jaws().both() ? Interval.around(0, widest / 2) : Interval.of(0, widest);
    Interval v = Interval.around(0, vise.jaws().width() / 2);
    return new Rectangle(turn.x(u, v), turn.y(u, v));
  }

  /** The work area of a job: its workpiece between the jaws. */
  public static Rectangle part(Vise vise, Job job, Orientation turn) {
    Interval u = JobPart.across(vise, job);
    Interval v = JobPart.along(job);
    return new Rectangle(turn.x(u, v), turn.y(u, v));
  }
}
