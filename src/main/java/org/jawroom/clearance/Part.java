package org.jawroom.clearance;

import org.jawroom.geometry.Box;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Stretch;
import org.jawroom.geometry.Turn;

/**
 * A part of a vise in one situation: a box in the vise frame whose u limits run with the opening.
 *
 * @param rank its place in the order of parts, by which equal margins are told apart
 * @param handle whether it counts as the handle
 */
public record Part(
    String name,
    int rank,
    boolean handle,
    Situation situation,
    Stretch u,
    Interval v,
    Interval w,
    long tolerance) {

  /** The same part standing {@code riser} higher. */
  public Part raised(long riser) {
    return new Part(name, rank, handle, situation, u, v, w.plus(riser), tolerance);
  }

  /** What it sweeps over {@code openings} with the vise frame's origin on the table frame's. */
  public Box over(Interval openings, Turn turn) {
    Interval swept = u.over(openings);
    return new Box(turn.x(swept, v), turn.y(swept, v), w);
  }
}
