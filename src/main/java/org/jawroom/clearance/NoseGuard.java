package org.jawroom.clearance;

import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Rectangle;
import org.jawroom.shop.Guard;

/**
 * A guard that goes up and down with the spindle nose and counts while cutting.
 *
 * @param plan what it sweeps in the table's plane while cutting
 * @param fromNose its z limits, from the nose
 */
public record NoseGuard(
    Guard guard, Rectangle plan, Interval fromNose, long clearance, long tolerance) {}
