package org.jawroom.shop;

import java.util.OptionalLong;
import org.jawroom.geometry.Length;

/**
 * Settings of the whole shop; lengths in half-nanometres.
 *
 * @param clearance the required clearance of guards without one of their own
 * @param handRoom least required clearance of a handle while loading
 * @param spacing least distance between two vises on one table
 * @param clampRoom width of a strap clamp beside the base, on either side
 * @param shortestTool nose to tip; empty: guards that move along z yield a nose height instead of
 *     entering the verdict
 * @param jawPlay how far the jaws open beyond a job's width to let the part in
 * @param leastOpening least width of an opening range that makes a pairing {@code limited}
 * @param maxOverhang greatest overhang of a base over a table edge; empty: no limit
 */
public record Settings(
    long clearance,
    long handRoom,
    long spacing,
    long clampRoom,
    OptionalLong shortestTool,
    long jawPlay,
    long leastOpening,
    OptionalLong maxOverhang) {

  /** Openings are printed in steps of 0.01 mm; the least opening may not be smaller. */
  public static final long OPENING_GRAIN = Length.MM / 100;

  /**
   * Clearance 6 mm (about a quarter inch: common practice, no source), hand room 25 mm (ISO 13854).
   */
  public static final Settings DEFAULTS =
      new Settings(
          6 * Length.MM,
          25 * Length.MM,
          6 * Length.MM,
          60 * Length.MM,
          OptionalLong.empty(),
          10 * Length.MM,
          25 * Length.MM,
          OptionalLong.empty());

  public Settings {
    Check.notNegative("clearance", clearance);
    Check.notNegative("hand room", handRoom);
    Check.notNegative("spacing", spacing);
    Check.notNegative("clamp room", clampRoom);
    Check.notNegative("jaw play", jawPlay);
    shortestTool.ifPresent(length -> Check.notNegative("shortest tool", length));
    maxOverhang.ifPresent(length -> Check.notNegative("max overhang", length));
    if (leastOpening < OPENING_GRAIN) {
      throw new IllegalArgumentException("least opening under 0.01 mm: " + leastOpening);
    }
  }

  /**
   * A copy with clearance and hand room reduced by {@code less}.
   *
   * @throws IllegalArgumentException if either becomes negative
   */
  public Settings withLessClearance(long less) {
    return new Settings(
        clearance - less,
        handRoom - less,
        spacing,
        clampRoom,
        shortestTool,
        jawPlay,
        leastOpening,
        maxOverhang);
  }
}
