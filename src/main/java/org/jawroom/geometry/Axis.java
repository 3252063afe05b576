package org.jawroom.geometry;

import java.util.Locale;

/** The axes of the table frame, named after ISO 841. */
public enum Axis {
  X,
  Y,
  Z;

  private final String letter = name().toLowerCase(Locale.ROOT);

  /** The letter in lower case, as tables and reports write it. */
  public String letter() {
    return letter;
  }

  /**
   * The other axis of the table plane.
   *
   * @throws IllegalArgumentException for {@code Z}
   */
  public Axis across() {
    if (this == Z) {
      throw new IllegalArgumentException("Z has no counterpart in the plane");
    }
    return this == X ? Y : X;
  }
}
