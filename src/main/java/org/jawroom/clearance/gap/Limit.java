package org.jawroom.clearance.gap;

import org.jawroom.clearance.Situation;
import org.jawroom.clearance.guard.SweptGuard;
import org.jawroom.clearance.part.Part;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Box;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Orientation;

/**
 * The witness of a margin: a part and a guard at one placement.
 *
 * @param gap the signed distance along {@code axis}, half-nanometres
 * @param required the required clearance, without tolerances
 * @param axis the limiting axis
 * @param opening the end of the opening range that yields the part's facing edge
 * @param partBox the part's swept box in the table frame
 */
public record Limit(
    Part part, SweptGuard guard, long gap, long required, Axis axis, JawEnd opening, Box partBox) {

  /**
   * The witness of one part and one guard of the same situation, with the vise's origin at (x, y).
   */
  public static Limit of(
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

  /** Which end of the opening range yields the edge facing the guard along the jaws' travel. */
  private static JawEnd end(
      Part part, Interval swept, Interval guard, Orientation turn, Interval openings) {
    boolean highFaces = guard.lo() - swept.hi() >= swept.lo() - guard.hi();
    // Along +u the facing edge is the high u edge; along −u it is the low one.
    boolean highU = highFaces == (turn.uSign() > 0);
    long closed = highU ? part.u().hi(openings.lo()) : -part.u().lo(openings.lo());
    long open = highU ? part.u().hi(openings.hi()) : -part.u().lo(openings.hi());
    if (closed == open) {
      return JawEnd.ANY;
    }
    return closed > open ? JawEnd.CLOSED : JawEnd.OPEN;
  }

  /** Worst-case stack: both tolerances in the unfavourable direction. */
  public long tolerance() {
    return guard.tolerance() + part.tolerance();
  }

  /** The situation in which the two are compared. */
  public Situation situation() {
    return part.situation();
  }

  /** The guard's swept box in the table frame. */
  public Box guardBox() {
    return guard.box();
  }

  /** gap − required − tolerance, half-nanometres; negative if something is hit or too close. */
  public long margin() {
    return gap - required - tolerance();
  }
}
