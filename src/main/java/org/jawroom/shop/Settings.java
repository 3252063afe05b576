package org.jawroom.shop;

import java.util.OptionalLong;
import org.jawroom.geometry.Length;

/**
 * What holds for the whole shop.
 *
 * @param clearance the required clearance where a guard has none of its own
 * @param handRoom the least clearance of a handle while loading
 * @param spacing the least between two vises on one table
 * @param clampRoom how much a strap clamp takes on either side of a base
 * @param shortestTool nose to tip; empty: heads are told as a number, not in the verdict
 * @param jawPlay how much further than a job's part the jaws go to let it in
 * @param leastOpening the least part of the opening that makes a pairing {@code limited}
 * @param maxOverhang how far a base may hang over a table edge; empty: no limit
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

  /** Openings are printed to this grain, 0.01 mm; no least opening may be less. */
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

  /** The same with clearance and hand room smaller by {@code less}; neither may come below 0. */
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
