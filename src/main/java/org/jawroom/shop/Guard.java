package org.jawroom.shop;

import java.util.Optional;
import java.util.OptionalLong;
import org.jawroom.geometry.Box;

/**
 * One row of {@code guards}: something beside the table that could be hit.
 *
 * @param name its name, unique on its machine
 * @param kind what sort of thing it is, as written; never changes a number
 * @param carriedBy the axes that carry it ("table" already resolved to the machine's own)
 * @param when in which situation it counts
 * @param side if it is taped as the machine's gaps are, from which side of the table
 * @param gap the taped gap, known or blank, where {@code side} is given (rows with gap {@code none}
 *     are left out on reading); {@link Dimension#NONE} for a box
 * @param limits its limits; z from the table top, or from the spindle nose where it moves against
 *     the table along z. Along the direction of {@code side} without end
 * @param clearance its own required clearance; empty: the setting's
 * @param tolerance its own tolerance; empty: the machine's
 */
public record Guard(
    String name,
    String kind,
    Axes carriedBy,
    When when,
    Optional<Side> side,
    Dimension gap,
    Box limits,
    OptionalLong clearance,
    OptionalLong tolerance) {
  public Guard {
    Check.named("guard", name);
    if (side.isEmpty() != gap.isNone()) {
      throw new IllegalArgumentException(
          "guard " + name + " needs both a side and a gap, or neither");
    }
    clearance.ifPresent(length -> Check.notNegative("clearance", length));
    tolerance.ifPresent(length -> Check.notNegative("tolerance", length));
  }

  /** The same guard under another name. */
  public Guard withName(String name) {
    return new Guard(name, kind, carriedBy, when, side, gap, limits, clearance, tolerance);
  }

  /** The same guard taped at another gap. */
  public Guard withGap(Dimension gap) {
    return new Guard(name, kind, carriedBy, when, side, gap, limits, clearance, tolerance);
  }

  /** The same guard at another place, or of another size. */
  public Guard withLimits(Box limits) {
    return new Guard(name, kind, carriedBy, when, side, gap, limits, clearance, tolerance);
  }

  /** The same guard asking for another clearance of its own. */
  public Guard withClearance(OptionalLong clearance) {
    return new Guard(name, kind, carriedBy, when, side, gap, limits, clearance, tolerance);
  }
}
