package org.jawroom.placement.search;

import java.util.OptionalLong;
import org.jawroom.geometry.Orientation;

/**
 * The best that another turn and mount could do, over the opening range of the recommended
 * placement.
 *
 * @param best its recommended place by the same order of preference
 * @param margin of that place; empty where nothing listed can be hit
 * @param reachShortfall there
 */
public record Alternative(
    Orientation turn, String mount, Roomiest best, OptionalLong margin, long reachShortfall) {}
