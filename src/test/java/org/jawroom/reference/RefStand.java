package org.jawroom.reference;

import org.jawroom.geometry.Orientation;

/** A vise in a turn and mount at a place of the table. */
record RefStand(Orientation turn, String mount, long x, long y) {}
