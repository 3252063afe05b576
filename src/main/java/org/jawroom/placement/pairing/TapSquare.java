package org.jawroom.placement.pairing;

import java.math.BigInteger;
import java.util.List;
import org.jawroom.clearance.gap.Limit;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Box;
import org.jawroom.geometry.Interval;
import org.jawroom.placement.search.Recommendation;
import org.jawroom.placement.space.Place;
import org.jawroom.shop.vise.Vise;

/**
 * How a vise is tapped square about one snug bolt or strap, the pivot: that bolt whose distance
 * from the far end of the jaw, along the jaw, is greatest; of equals the first of the mount. All
 * lengths in half-nanometres.
 *
 * <p><b>Swing.</b> Turned about the pivot until the far end of the jaw, at distance R, has moved
 * straight by m, a point at (dx, dy) from the pivot shifts by at most |dy| m/R + |dx| m²/(2R²)
 * along x, and likewise along y, since sin φ ≤ 2 sin(φ/2) = m/R and 1 − cos φ = (m/R)²/2. So as
 * long as every pair keeps, on some axis, a gap of this size beyond its required clearance and
 * tolerance, it keeps them at every angle up to there, either way. The swing is the greatest such
 * m: a lower bound, exact to first order.
 *
 * <p>It assumes that the vise turns about the middle of the pivot bolt, over all of the openings
 * and the travel that the pairs refer to, cutting and loading alike. It says nothing about the play
 * of the other bolts in their holes and slots.
 *
 * @param pivot index of the pivot in the order of the mount
 * @param at its middle in the table frame
 * @param jaw the table axis along the jaws
 * @param zeroLow whether the end of the jaw nearest the pivot, where the indicator is set to zero,
 *     is the one at the low end of that axis (left, front)
 * @param jawWidth the length of jaw swept by the indicator
 * @param lever from the pivot to the far end, along the jaw: a reading r there, with zero at the
 *     other end, is taken out by moving the far end by r · lever / jawWidth
 * @param swing the bound, at most R
 * @param nothingNear whether even R is clear
 */
public record TapSquare(
    int pivot,
    Place at,
    Axis jaw,
    boolean zeroLow,
    long jawWidth,
    long lever,
    long swing,
    boolean nothingNear) {

  /**
   * How to tap the vise square at its place.
   *
   * @param layout of the place
   * @param pairs every pair there
   */
  public static TapSquare of(Vise vise, Recommendation place, Layout layout, List<Limit> pairs) {
    Axis jaw = place.handleTo().uAxis().across();
    long middle = along(jaw, new Place(place.x(), place.y()));
    long half = vise.jaws().width() / 2;
    int pivot = 0;
    for (int i = 1; i < layout.bolts().size(); i++) {
      if (lever(layout, i, jaw, middle, half) > lever(layout, pivot, jaw, middle, half)) {
        pivot = i;
      }
    }
    Place at = layout.bolts().get(pivot);
    boolean zeroLow = along(jaw, at) <= middle;
    long lever = lever(layout, pivot, jaw, middle, half);
    long across = along(jaw.across(), at) - along(jaw.across(), new Place(place.x(), place.y()));
    BigInteger radius = big(lever).pow(2).add(big(across).pow(2)).sqrt();
    long farEnd = radius.longValueExact();
    long swing = farEnd;
    for (Limit pair : pairs) {
      swing = Math.min(swing, swing(pair, at, farEnd));
    }
    return new TapSquare(
        pivot, at, jaw, zeroLow, vise.jaws().width(), lever, swing, swing == farEnd);
  }

  private static long lever(Layout layout, int bolt, Axis jaw, long middle, long half) {
    return Math.abs(along(jaw, layout.bolts().get(bolt)) - middle) + half;
  }

  private static long along(Axis axis, Place place) {
    return axis == Axis.X ? place.x() : place.y();
  }

  /** How far the far end may move before this pair may come too near; at most the radius. */
  private static long swing(Limit pair, Place pivot, long radius) {
    Box part = pair.partBox();
    long asked = pair.required() + pair.tolerance();
    if (part.z().gapTo(pair.guardBox().z()) >= asked) {
      return radius;
    }
    long x = farthest(part.x(), pivot.x());
    long y = farthest(part.y(), pivot.y());
    return Math.max(
        shifted(part.x().gapTo(pair.guardBox().x()) - asked, y, x, radius),
        shifted(part.y().gapTo(pair.guardBox().y()) - asked, x, y, radius));
  }

  private static long farthest(Interval part, long from) {
    return Math.max(Math.abs(part.lo() - from), Math.abs(part.hi() - from));
  }

  /** The greatest m with across · m/R + along · m²/(2R²) ≤ slack, by bisection. */
  private static long shifted(long slack, long across, long along, long radius) {
    if (slack < 0) {
      return 0;
    }
    BigInteger most = big(2).multiply(big(radius).pow(2)).multiply(big(slack));
    BigInteger linear = big(2).multiply(big(radius)).multiply(big(across));
    long clear = 0;
    long tooFar = radius + 1;
    while (tooFar - clear > 1) {
      long middle = clear + (tooFar - clear) / 2;
      BigInteger m = big(middle);
      if (linear.multiply(m).add(big(along).multiply(m.pow(2))).compareTo(most) <= 0) {
        clear = middle;
      } else {
        tooFar = middle;
      }
    }
    return clear;
  }

  private static BigInteger big(long value) {
    return BigInteger.valueOf(value);
  }
}
