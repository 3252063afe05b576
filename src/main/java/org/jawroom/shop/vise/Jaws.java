package org.jawroom.shop.vise;

import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.value.Require;

/**
 * The jaws of a vise.
 *
 * @param both whether both jaws move about the middle (self-centring) instead of one against a
 *     fixed one
 * @param width along the jaw, {@code height} above the bed
 * @param platesWidth the widest plates used, {@code platesHeight} the tallest; those of the jaw if
 *     the row leaves them blank
 * @param fixedThickness face to back, plates on; may be blank; not used if {@code both}
 * @param movingThickness likewise, for the moving jaw or jaws
 */
public record Jaws(
    boolean both,
    long width,
    long height,
    long platesWidth,
    long platesHeight,
    Dimension fixedThickness,
    Dimension movingThickness) {
  public Jaws {
    Require.notNegative("jaw width", Math.min(width, platesWidth));
    Require.notNegative("jaw height", Math.min(height, platesHeight));
    Require.notNegative("fixed jaw thickness", fixedThickness);
    Require.notNegative("moving jaw thickness", movingThickness);
  }

  public long widestWidth() {
    return Math.max(width, platesWidth);
  }

  public long tallestHeight() {
    return Math.max(height, platesHeight);
  }

  /** A copy with other thicknesses. */
  public Jaws withThickness(Dimension fixed, Dimension moving) {
    return new Jaws(both, width, height, platesWidth, platesHeight, fixed, moving);
  }
}
