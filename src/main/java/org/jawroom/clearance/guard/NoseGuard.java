package org.jawroom.clearance.guard;

import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Rectangle;
import org.jawroom.shop.machine.Guard;

/**
 * A guard that moves with the spindle nose along z and counts while cutting.
 *
 * @param plan the swept rectangle in the table plane while cutting
 * @param fromNose its z limits relative to the nose
 */
public record NoseGuard(
    Guard guard, Rectangle plan, Interval fromNose, long clearance, long tolerance) {}
