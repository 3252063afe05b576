package org.jawroom.advice.assess;

import java.util.List;
import java.util.Optional;
import org.jawroom.clearance.Blanks;
import org.jawroom.clearance.Situation;
import org.jawroom.clearance.part.Part;
import org.jawroom.clearance.part.ViseParts;
import org.jawroom.geometry.Box;
import org.jawroom.geometry.Orientation;
import org.jawroom.shop.vise.Vise;

/**
 * The extents of a vise over everything it sweeps at any opening, screw and handle included, bolts
 * excluded. Half-nanometres.
 *
 * @param length along u, {@code width} along v
 * @param topCutting greatest height while cutting, {@code topLoading} while loading
 * @param bedHeight height of the bed, which a tool must clear
 */
public record ViseSize(
    Vise vise, long length, long width, long topCutting, long topLoading, long bedHeight) {

  /** The size of a vise; empty if a blank leaves it open or if the vise has no parts. */
  static Optional<ViseSize> of(Vise vise) {
    Blanks blanks = new Blanks();
    List<Part> parts = ViseParts.of(vise, blanks);
    if (!blanks.columns().isEmpty() || parts.isEmpty()) {
      return Optional.empty();
    }
    Box all =
        parts.stream()
            .map(part -> part.over(vise.opening(), Orientation.RIGHT))
            .reduce(
                (one, other) ->
                    new Box(
                        one.x().hull(other.x()), one.y().hull(other.y()), one.z().hull(other.z())))
            .orElseThrow();
    return Optional.of(
        new ViseSize(
            vise,
            all.x().length(),
            all.y().length(),
            top(parts, Situation.CUTTING),
            top(parts, Situation.LOADING),
            vise.base().bedHeight()));
  }

  /** Greatest height in either situation. */
  public long top() {
    return Math.max(topCutting, topLoading);
  }

  private static long top(List<Part> parts, Situation situation) {
    return parts.stream()
        .filter(part -> part.situation() == situation)
        .mapToLong(part -> part.w().hi())
        .max()
        .orElse(0);
  }
}
