package org.jawroom.shop;

/**
 * The jaws of a vise.
 *
 * @param both whether both move about the middle (self-centring) rather than one against a fixed
 *     one
 * @param width along the jaw, {@code height} above the bed
 * @param platesWidth the widest plates used on it, {@code platesHeight} the tallest; as the jaw
 *     where the row leaves them blank
 * @param fixedThickness face to back, plates on; may be blank; not asked of {@code both}
 * @param movingThickness likewise
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
    Check.notNegative("jaw width", Math.min(width, platesWidth));
    Check.notNegative("jaw height", Math.min(height, platesHeight));
    Check.notNegative("fixed jaw thickness", fixedThickness);
    Check.notNegative("moving jaw thickness", movingThickness);
  }

  public long widestWidth() {
    return Math.max(width, platesWidth);
  }

  public long tallestHeight() {
    return Math.max(height, platesHeight);
  }

  /** The same jaws of other thickness. */
  public Jaws withThickness(Dimension fixed, Dimension moving) {
    return new Jaws(both, width, height, platesWidth, platesHeight, fixed, moving);
  }
}
