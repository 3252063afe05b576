package org.jawroom.reference.solve;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.jawroom.clearance.Situation;
import org.jawroom.clearance.gap.JawEnd;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Orientation;
import org.jawroom.placement.pairing.Caveat;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.reference.space.Ratio;
import org.jawroom.reference.space.Span;
import org.jawroom.shop.value.Column;

/**
 * The reference's result for a pairing.
 *
 * @param bestMargin with hand room for {@code fits}, else without; empty if nothing can be hit,
 *     without a mount, and if a blank is needed
 * @param usable the usable opening, for {@code fits}, {@code awkward} and {@code limited}, and for
 *     {@code measure} if there is one
 * @param caveats why a clear place is not shown as plain, in their own order
 * @param toolTooShort whether even the highest nose leaves less height over the bed than the
 *     shortest tool is long
 * @param bounds the best margins at worst and at best
 * @param missing the columns of the open readings, for {@code unknown}
 */
public record ReferenceOutcome(
    Verdict verdict,
    OptionalLong bestMargin,
    Optional<Place> recommended,
    Optional<Usable> usable,
    List<Caveat> caveats,
    OptionalLong roomOverJaws,
    Optional<BigDecimal> loadLeft,
    boolean toolTooShort,
    Bounds bounds,
    List<Column> missing) {

  /** Each empty where no reading is open, without end, and where nothing mounts. */
  public record Bounds(OptionalLong atWorst, OptionalLong atBest) {
    static final Bounds NONE = new Bounds(OptionalLong.empty(), OptionalLong.empty());
  }

  /**
   * The recommended placement.
   *
   * @param thread of its bolts; empty for clamps
   * @param settable whether the vise can be tapped square there; means nothing with a margin below
   *     0
   * @param handGap the least gap round the handle while loading; empty if it can hit nothing
   * @param margin over the openings it refers to; empty if nothing can be hit
   * @param play left, right, front, rear; empty if the margin is below 0
   */
  public record Place(
      Orientation turn,
      String mount,
      OptionalLong thread,
      long x,
      long y,
      List<Integer> slots,
      boolean settable,
      OptionalLong margin,
      Optional<Limiting> limiting,
      long reachShortfall,
      OptionalLong overhang,
      OptionalLong handGap,
      Optional<List<Long>> play,
      OptionalLong noseNotBelow) {}

  /**
   * The limiting pair.
   *
   * @param opening empty if both sides of the axis are equally near, so that the model determines
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
   * @param from exact, as is {@code to}; {@code printed} is rounded inward to 0.01 mm
   */
  public record Usable(Ratio from, Ratio to, Span printed) {}
}
