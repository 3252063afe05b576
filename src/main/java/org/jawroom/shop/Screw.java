package org.jawroom.shop;

/**
 * The screw.
 *
 * @param rear what sticks out behind the casting, {@code front} before it
 * @param height of its axis above the underside; may be blank
 * @param diameter may be blank
 */
public record Screw(Projection rear, Projection front, Dimension height, Dimension diameter) {
  public Screw {
    Check.notNegative("screw diameter", diameter);
  }
}
