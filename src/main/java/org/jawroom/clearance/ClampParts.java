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

  /**
   * The clamps of a simple vise whose base is known, in both situations.
   *
   * @param room width of a clamp beside the base
   */
  public static List<Part> of(Vise vise, long room) {
    long half = vise.base().width().length() / 2;
    Interval u = Interval.of(-vise.base().rearReach().length(), vise.base().frontReach().length());
    List<Part> parts = new ArrayList<>();
    for (Interval v : List.of(Interval.of(-half - room, -half), Interval.of(half, half + room))) {
      for (Situation situation : Situation.values()) {
        parts.add(
            Part.of(
                PartRole.CLAMP,
                situation,
                OpeningInterval.constant(u, vise.opening()),
                v,
                Interval.of(0, vise.base().bedHeight()),
                vise.provenance().tolerance()));
      }
    }
    return parts;
  }
}
