package org.jawroom.placement.space;

/** A position of the vise frame's origin in the table frame, half-nanometres. */
public record Place(long x, long y) {}
