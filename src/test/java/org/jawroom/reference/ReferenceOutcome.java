package org.jawroom.reference;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.jawroom.clearance.JawEnd;
import org.jawroom.clearance.Situation;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Orientation;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.shop.Column;

/**
 * What the reference says of a pairing.
 *
 * @param bestMargin empty where nothing can be hit, without a mount, and where a blank is needed
 * @param usable the usable opening, for {@code fits} and {@code limited}
 * @param toolTooShort whether even at its highest the nose leaves less over the bed than the
 *     shortest tool is long
 * @param missing the blank columns, for {@code unknown}
 */
public record ReferenceOutcome(
    Verdict verdict,
    OptionalLong bestMargin,
    Optional<Place> recommended,
    Optional<Usable> usable,
    OptionalLong roomOverJaws,
    Optional<BigDecimal> loadLeft,
    boolean toolTooShort,
    List<Column> missing) {

  /**
   * The recommended placement.
   *
   * @param margin over the openings it speaks of; empty where nothing can be hit
   * @param play left, right, front, rear; empty below margin 0
   */
  public record Place(
      Orientation turn,
      String mount,
      long x,
      long y,
      List<Integer> slots,
      OptionalLong margin,
      Optional<Limiting> limiting,
      long reachShortfall,
      OptionalLong overhang,
      Optional<List<Long>> play,
      OptionalLong noseNotBelow) {}

  /**
   * The pair that limits it.
   *
   * @param opening empty where the two sides of the axis are equally near, so that the model names
   *     no facing edge
   */
  public record Limiting(
      String guard,
      String part,
      Axis axis,
      Situation situation,
      Optional<JawEnd> opening,
      long required,
      long tolerance) {}

  /**
   * The usable opening.
   *
   * @param from exact, and {@code to}; rounded inward to 0.01 mm as {@code printed}
   */
  public record Usable(Fraction from, Fraction to, Span printed) {}
}
