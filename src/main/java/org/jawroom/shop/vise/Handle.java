package org.jawroom.shop.vise;

import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.value.Require;

/**
 * The handle on the screw's front end.
 *
 * @param radius greatest distance from the screw's axis; {@code none}: no handle; may be blank
 * @param depth length along the screw's axis, to the end of the knob; may be blank
 * @param onWhileCutting whether it stays on while cutting
 * @param fullSwing whether it needs a full turn instead of a back-and-forth swing over the top
 */
public record Handle(Dimension radius, Dimension depth, boolean onWhileCutting, boolean fullSwing) {
  public Handle {
    Require.notNegative("handle radius", radius);
    Require.notNegative("handle depth", depth);
  }
}
