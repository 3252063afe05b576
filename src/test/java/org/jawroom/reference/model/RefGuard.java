package org.jawroom.reference.model;

import org.jawroom.reference.space.Span;

/**
 * An obstacle in the table frame.
 *
 * @param cutting the box swept while cutting, {@code null} if it does not count then; {@code
 *     loading} likewise
 * @param clearance its own or else the setting's
 * @param tolerance its own or else the machine's
 * @param rising its box over the travel while cutting, z measured from the nose; {@code null}
 *     unless it moves along z, has a z limit and counts while cutting
 */
public record RefGuard(
    String name, Block cutting, Block loading, long clearance, long tolerance, Block rising) {

  /** Three intervals. */
  public record Block(Span x, Span y, Span z) {}

  public boolean isTable() {
    return name.equals("table");
  }

  public Block block(boolean whileCutting) {
    return whileCutting ? cutting : loading;
  }
}
