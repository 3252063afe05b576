package org.jawroom.shop.vise;

import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.value.Require;

/**
 * The casting under the jaws.
 *
 * @param bedHeight height of the bed above the underside
 * @param width over flange, ears or swivel plate; may be blank
 * @param rearReach from the fixed jaw's face (both jaws moving: the plane midway) to the rear end
 *     of the casting, {@code frontReach} to its front end, screw not included; either may be blank.
 *     The reader derives one of them where the row gives the other and the overall length
 */
public record Base(long bedHeight, Dimension width, Dimension rearReach, Dimension frontReach) {
  public Base {
    Require.notNegative("bed height", bedHeight);
    Require.notNegative("base width", width);
  }
}
