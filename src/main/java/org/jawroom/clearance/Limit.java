package org.jawroom.clearance;

import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Box;

/**
 * The part–guard pair that limits a placement: the witness of its margin.
 *
 * @param gap the signed distance along {@code axis}; {@code required} clearance and {@code
 *     tolerance} (guard's and part's together) are what it must hold
 * @param guard name of the guard, {@code part} of the part
 * @param axis the limiting axis
 * @param opening which end of the range of openings brings the part's facing edge there
 * @param partBox what the part sweeps, {@code guardBox} what the guard sweeps, in the table frame
 */
public record Limit(
    long gap,
    long required,
    long tolerance,
    String guard,
    String part,
    Axis axis,
    Situation situation,
    JawEnd opening,
    Box partBox,
    Box guardBox) {

  /** What is left of the gap: half-nanometres, negative where something is hit or too close. */
  public long margin() {
    return gap - required - tolerance;
  }
}
