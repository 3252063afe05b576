package org.jawroom.shop.vise;

import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.value.Require;

/**
 * The screw of a vise.
 *
 * @param rear protrusion behind the casting, {@code front} in front of it
 * @param height of its axis above the underside; may be blank
 * @param diameter may be blank
 */
public record Screw(Projection rear, Projection front, Dimension height, Dimension diameter) {
  public Screw {
    Require.notNegative("screw diameter", diameter);
  }

  /** A copy with another rear projection. */
  public Screw withRear(Projection rear) {
    return new Screw(rear, front, height, diameter);
  }

  /** A copy with another front projection. */
  public Screw withFront(Projection front) {
    return new Screw(rear, front, height, diameter);
  }
}
