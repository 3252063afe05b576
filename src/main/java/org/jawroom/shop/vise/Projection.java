package org.jawroom.shop.vise;

import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.value.Require;

/** How far the screw protrudes from one end of the casting, with the jaws closed and open. */
public record Projection(Dimension closed, Dimension open) {

  /** Blank at both openings. */
  public static final Projection BLANK = new Projection(Dimension.BLANK, Dimension.BLANK);

  public Projection {
    Require.notNegative("projection", closed);
    Require.notNegative("projection", open);
  }

  /** Whether the row declares that no screw protrudes at this end. */
  public boolean isNone() {
    return closed.isNone() && open.isNone();
  }
}
