package org.jawroom.shop;

/**
 * The casting under the jaws.
 *
 * @param bedHeight the bed above the underside
 * @param width over flange, ears or swivel plate
 * @param rearReach from the fixed jaw's face (both jaws moving: the middle) to the rear end of the
 *     casting, {@code frontReach} to its front end, screw not included; one of them already worked
 *     out where the row gave the other and the overall length
 */
public record Base(long bedHeight, Dimension width, Dimension rearReach, Dimension frontReach) {
  public Base {
    Check.notNegative("bed height", bedHeight);
    Check.notNegative("base width", width);
  }
}
