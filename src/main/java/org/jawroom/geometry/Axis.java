package org.jawroom.geometry;

/** The axes of the table frame, named after ISO 841. */
public enum Axis {
  X,
  Y,
  Z;

  /** The letter in lower case, as tables and reports write it. */
  public String letter() {
    return name().toLowerCase(java.util.Locale.ROOT);
  }

  /** The other axis of the table's plane; asked of X or Y only. */
  public Axis across() {
    return switch (this) {
      case X -> Y;
      case Y -> X;
      case Z -> throw new IllegalArgumentException("Z has no counterpart in the plane");
    };
  }
}
