package org.jawroom.clearance;

import java.util.ArrayList;
import java.util.List;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.OpeningInterval;
import org.jawroom.shop.Vise;

/**
 * Strap clamps as parts: one box on either side of the base, as long as the base and as high as the
 * bed.
 */
public final class ClampParts {
  private ClampParts() {}

  /** Where the clamps of a simple vise lie along u: as far as its base. */
  public static Interval alongU(Vise vise) {
    return Interval.of(-vise.base().rearReach().length(), vise.base().frontReach().length());
  }

  /** Where they lie along v, on either side of the base. */
  public static List<Interval> alongV(Vise vise, long room) {
    long half = vise.base().width().length() / 2;
    return List.of(Interval.of(-half - room, -half), Interval.of(half, half + room));
  }

  /**
   * The clamps of a simple vise whose base is known, in both situations.
   *
   * @param room width of a clamp beside the base
   */
  public static List<Part> of(Vise vise, long room) {
    List<Part> parts = new ArrayList<>();
    for (Interval v : alongV(vise, room)) {
      for (Situation situation : Situation.values()) {
        parts.add(
            Part.of(
                PartRole.CLAMP,
                situation,
                OpeningInterval.constant(alongU(vise), vise.opening()),
                v,
                Interval.of(0, vise.base().bedHeight()),
                vise.provenance().tolerance()));
      }
    }
    return parts;
  }
}
