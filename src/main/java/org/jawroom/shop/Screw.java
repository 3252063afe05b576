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

  /** The same screw sticking out otherwise behind the casting. */
  public Screw withRear(Projection rear) {
    return new Screw(rear, front, height, diameter);
  }

  /** The same screw sticking out otherwise before the casting. */
  public Screw withFront(Projection front) {
    return new Screw(rear, front, height, diameter);
  }
}
