package org.jawroom.clearance;

import org.jawroom.shop.machine.Side;
import org.jawroom.shop.machine.Sides;

/**
 * What can be added at setup without changing machine or vise.
 *
 * @param riser height of a plate bolted under the vise; it raises every part, and the bed that a
 *     tool must clear
 * @param stops by how much soft limits or stops shorten the travel while cutting, at the end where
 *     the table stands toward each side (front: the spindle's greatest y; rear: its least y; left:
 *     its greatest x; right: its least x); at most half the travel each
 */
public record Setup(long riser, Sides<Long> stops) {

  /** No additions. */
  public static final Setup PLAIN = new Setup(0, new Sides<>(0L, 0L, 0L, 0L));

  public Setup {
    if (riser < 0) {
      throw new IllegalArgumentException("negative riser: " + riser);
    }
    for (Side side : Side.values()) {
      if (stops.get(side) < 0) {
        throw new IllegalArgumentException("negative cut of the travel: " + stops.get(side));
      }
    }
  }

  public static Setup onRiser(long height) {
    return new Setup(height, PLAIN.stops);
  }

  /** The travel shortened at one end. */
  public static Setup stopped(Side tableToward, long by) {
    return new Setup(0, PLAIN.stops.with(tableToward, by));
  }
}
