package org.jawroom.shop;

/**
 * One hole for a hold-down bolt, in the vise frame.
 *
 * @param u the hole's centre, {@code v} likewise; may be blank for the row's own pair
 * @param holeU the hole over all along u, {@code holeV} along v (round: both the same); may be
 *     blank
 */
public record Bolt(Dimension u, Dimension v, Dimension holeU, Dimension holeV) {
  public Bolt {
    Check.notNegative("hole", holeU);
    Check.notNegative("hole", holeV);
  }
}
