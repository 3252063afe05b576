package org.jawroom.shop;

/**
 * The handle on the screw's front end.
 *
 * @param radius how far it reaches from the screw's axis; {@code none}: no handle; may be blank
 * @param depth along the screw's axis, to the end of the knob; may be blank
 * @param onWhileCutting whether it stays on while cutting
 * @param fullSwing whether it must go all the way round rather than back and forth over the top
 */
public record Handle(Dimension radius, Dimension depth, boolean onWhileCutting, boolean fullSwing) {
  public Handle {
    Check.notNegative("handle radius", radius);
    Check.notNegative("handle depth", depth);
  }
}
