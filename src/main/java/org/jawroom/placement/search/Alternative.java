package org.jawroom.placement.search;

import java.util.OptionalLong;
import org.jawroom.geometry.Orientation;

/**
 * The best placement of another turn and mount over the opening range of the recommended one.
 *
 * @param best its recommended placement by the same order of preference
 * @param margin at that placement; empty if nothing listed can be hit
 * @param reachShortfall at that placement
 * @param settable whether the vise can be tapped square there; false if the margin is negative
 */
public record Alternative(
    Orientation turn,
    String mount,
    Roomiest best,
    OptionalLong margin,
    long reachShortfall,
    boolean settable) {}
