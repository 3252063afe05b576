package org.jawroom.clearance;

import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Box;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Orientation;

/**
 * A part and a guard at one placement: the witness of its margin where no other pair has less.
 *
 * @param gap the signed distance along {@code axis}, half-nanometres
 * @param required the clearance that the gap must keep, tolerance apart
 * @param axis the limiting axis
 * @param opening which end of the range of openings brings the part's facing edge there
 * @param partBox what the part sweeps, in the table frame
 */
public record Limit(
    Part part, SweptGuard guard, long gap, long required, Axis axis, JawEnd opening, Box partBox) {

  /**
   * What a part and a guard of the same situation are to each other, the vise's origin at (x, y).
   */
  static Limit of(
      Part part,
      SweptGuard guard,
      long required,
      Orientation turn,
      Interval openings,
      long x,
      long y) {
    Box box = part.over(openings, turn).at(x, y);
    Axis axis = box.gapAxis(guard.box());
    return new Limit(
        part,
        guard,
        box.gapTo(guard.box()),
        required,
        axis,
        axis == turn.uAxis()
            ? end(part, box.along(axis), guard.box().along(axis), turn, openings)
            : JawEnd.ANY,
        box);
  }

  /** Which end of the opening range gives the edge that faces the guard along the jaws' travel. */
  private static JawEnd end(
      Part part, Interval swept, Interval guard, Orientation turn, Interval openings) {
    boolean highFaces = guard.lo() - swept.hi() >= swept.lo() - guard.hi();
    // Along +u the high edge is the high u edge; against it the low one.
    boolean highU = highFaces == (turn.uSign() > 0);
    long closed = highU ? part.u().hi(openings.lo()) : -part.u().lo(openings.lo());
    long open = highU ? part.u().hi(openings.hi()) : -part.u().lo(openings.hi());
    if (closed == open) {
      return JawEnd.ANY;
    }
    return closed > open ? JawEnd.CLOSED : JawEnd.OPEN;
  }

  /** Both off the wrong way: worst case. */
  public long tolerance() {
    return guard.tolerance() + part.tolerance();
  }

  /** The situation in which the two meet. */
  public Situation situation() {
    return part.situation();
  }

  /** What the guard sweeps, in the table frame. */
  public Box guardBox() {
    return guard.box();
  }

  /** What is left of the gap: half-nanometres, negative where something is hit or too close. */
  public long margin() {
    return gap - required - tolerance();
  }
}
