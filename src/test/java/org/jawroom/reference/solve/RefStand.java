package org.jawroom.reference.solve;

import org.jawroom.geometry.Orientation;

/** A vise in a turn and mount at a place of the table. */
public record RefStand(Orientation turn, String mount, long x, long y) {}
