package org.jawroom.reference.model;

import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Orientation;
import org.jawroom.reference.space.Span;
import org.jawroom.shop.Job;
import org.jawroom.shop.vise.Vise;

/** The workpiece of a job in a vise, directly from the specification. */
public record RefJob(Vise vise, Job job) {

  /** Height of the tallest jaw top above the table. */
  private long jawTop() {
    return vise.base().bedHeight() + jawHeight();
  }

  public long jawHeight() {
    return Math.max(vise.jaws().height(), vise.jaws().platesHeight());
  }

  private long underside() {
    long bed = vise.base().bedHeight();
    // A grip that would put it into the bed fails anyway; the work then stands on the bed.
    return job.grip().isPresent() && job.grip().getAsLong() <= jawHeight()
        ? jawTop() - job.grip().getAsLong()
        : bed;
  }

  public long top() {
    return underside() + job.height();
  }

  public RefPart box() {
    long lo = vise.jaws().both() ? -job.width() / 2 : 0;
    long hi = lo + job.width();
    Span v = new Span(-job.length() / 2, job.length() / 2);
    Span w = new Span(underside(), top());
    return new RefPart("work", lo, hi, lo, hi, v, w, w, vise.provenance().tolerance());
  }

  /** The jaws run along x where the handle points to the front or the rear. */
  public boolean allows(Orientation turn) {
    boolean alongX = turn == Orientation.FRONT || turn == Orientation.REAR;
    return job.jawsAlong().isEmpty() || (job.jawsAlong().get() == Axis.X) == alongX;
  }
}
