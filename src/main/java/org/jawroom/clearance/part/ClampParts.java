package org.jawroom.clearance.part;

import java.util.ArrayList;
import java.util.List;
import org.jawroom.clearance.Certainty;
import org.jawroom.clearance.Situation;
import org.jawroom.geometry.Ends;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.OpeningInterval;
import org.jawroom.shop.vise.Vise;

/**
 * Strap clamps as parts: one box on either side of the base, as long as the base and as high as the
 * bed.
 */
public final class ClampParts {
  private ClampParts() {}

  /** How far the base of a simple vise reaches along u. */
  public static Ends alongU(Vise vise, Certainty certainty) {
    return certainty.ends(
        Certainty.sizes(vise.base().rearReach()).negated(),
        Certainty.sizes(vise.base().frontReach()));
  }

  /** Where the clamp at +v lies along v, beside half of the base; the other is its mirror image. */
  public static Ends alongV(Vise vise, long room, Certainty certainty) {
    Interval width = Certainty.sizes(vise.base().width());
    Interval half = Interval.of(width.lo() / 2, width.hi() / 2);
    return certainty.ends(half, half.plus(room));
  }

  /**
   * The clamps of a simple vise, in both situations; none at best if the values of its readings
   * leave nothing in common.
   *
   * @param room width of a clamp beside the base
   */
  public static List<Part> of(Vise vise, long room, Certainty certainty) {
    Ends u = alongU(vise, certainty);
    Ends right = alongV(vise, room, certainty);
    if (u.isReversed() || right.isReversed()) {
      return List.of();
    }
    Interval v = Interval.of(right.lo(), right.hi());
    List<Part> parts = new ArrayList<>();
    for (Interval side : List.of(v.negated(), v)) {
      for (Situation situation : Situation.values()) {
        parts.add(
            Part.of(
                PartRole.CLAMP,
                situation,
                new OpeningInterval(u, u, vise.opening()),
                side,
                Interval.of(0, vise.base().bedHeight()),
                vise.provenance().tolerance()));
      }
    }
    return parts;
  }
}
