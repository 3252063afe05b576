package org.jawroom.placement.space;

/** A place of the vise frame's origin on the table. */
public record Place(long x, long y) {}
