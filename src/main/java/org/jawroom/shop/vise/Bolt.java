package org.jawroom.shop.vise;

import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.value.Require;

/**
 * One hole for a hold-down bolt, in the vise frame.
 *
 * @param u centre of the hole, {@code v} likewise; blank only for the row's own pair
 * @param holeU overall size of the hole along u, {@code holeV} along v (round: both equal); may be
 *     blank
 */
public record Bolt(Dimension u, Dimension v, Dimension holeU, Dimension holeV) {
  public Bolt {
    Require.notNegative("hole", holeU);
    Require.notNegative("hole", holeV);
  }
}
