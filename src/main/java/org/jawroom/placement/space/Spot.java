package org.jawroom.placement.space;

/** A place and its margin. */
public record Spot(Place place, long margin) {}
