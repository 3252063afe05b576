package org.jawroom.placement;

/** A place and its margin. */
record Spot(Place place, long margin) {}
