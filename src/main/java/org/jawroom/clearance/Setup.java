package org.jawroom.clearance;

import org.jawroom.shop.Side;
import org.jawroom.shop.Sides;

/**
 * What a setter may add without changing machine or vise.
 *
 * @param riser height of a plate bolted under the vise: everything of the vise stands that much
 *     higher, and so does the bed that a tool must clear
 * @param stops how far the travel is cut while cutting, by soft limits or stops, at the end where
 *     the table stands toward each side (front: the spindle's greatest y; back: its least y; left:
 *     its greatest x; right: its least x); at most half the travel each
 */
public record Setup(long riser, Sides<Long> stops) {

  /** Nothing added. */
  public static final Setup PLAIN = new Setup(0, new Sides<>(0L, 0L, 0L, 0L));

  public Setup {
    if (riser < 0) {
      throw new IllegalArgumentException("riser of " + riser);
    }
    for (Side side : Side.values()) {
      if (stops.get(side) < 0) {
        throw new IllegalArgumentException("travel cut by " + stops.get(side));
      }
    }
  }

  public static Setup onRiser(long height) {
    return new Setup(height, PLAIN.stops);
  }

  /** The travel cut at one end. */
  public static Setup stopped(Side tableToward, long by) {
    return new Setup(0, PLAIN.stops.with(tableToward, by));
  }
}
