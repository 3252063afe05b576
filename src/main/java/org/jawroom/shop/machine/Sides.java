package org.jawroom.shop.machine;

/** One value for each side of the table. */
public record Sides<T>(T front, T rear, T left, T right) {

  /** The same value on every side. */
  public static <T> Sides<T> all(T value) {
    return new Sides<>(value, value, value, value);
  }

  public T get(Side side) {
    return switch (side) {
      case FRONT -> front;
      case REAR -> rear;
      case LEFT -> left;
      case RIGHT -> right;
    };
  }

  /** The same with another value on one side. */
  public Sides<T> with(Side side, T value) {
    return new Sides<>(
        side == Side.FRONT ? value : front,
        side == Side.REAR ? value : rear,
        side == Side.LEFT ? value : left,
        side == Side.RIGHT ? value : right);
  }
}
