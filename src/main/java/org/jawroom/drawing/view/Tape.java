package org.jawroom.drawing.view;

import org.jawroom.geometry.Axis;

/**
 * A tape measure on the plan, from an edge of the table to the vise.
 *
 * @param axis along which it lies: x from the left edge, y from the front edge
 * @param edge where the table's edge lies on that axis
 * @param at where the vise's reference lies; below the edge if it overhangs
 * @param datum whether the reference is the face of the fixed jaw, else the side of the base
 * @param figure the distance in words
 */
public record Tape(Axis axis, long edge, long at, boolean datum, String figure) {}
