package org.jawroom.shop;

/** One value for each side of the table. */
public record Sides<T>(T front, T rear, T left, T right) {

  public T get(Side side) {
    return switch (side) {
      case FRONT -> front;
      case REAR -> rear;
      case LEFT -> left;
      case RIGHT -> right;
    };
  }
}
