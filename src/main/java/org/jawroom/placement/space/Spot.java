package org.jawroom.placement.space;

/** A position and its margin. */
public record Spot(Place place, long margin) {}
