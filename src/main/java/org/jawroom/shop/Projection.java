package org.jawroom.shop;

/** How far the screw sticks out of one end of the casting, with the jaws closed and open. */
public record Projection(Dimension closed, Dimension open) {

  /** Not known at either opening. */
  public static final Projection BLANK = new Projection(Dimension.BLANK, Dimension.BLANK);

  public Projection {
    Check.notNegative("projection", closed);
    Check.notNegative("projection", open);
  }

  /** Whether there is outright no screw at this end. */
  public boolean isNone() {
    return closed.isNone() && open.isNone();
  }
}
