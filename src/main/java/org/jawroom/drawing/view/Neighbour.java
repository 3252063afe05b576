package org.jawroom.drawing.view;

import org.jawroom.placement.pairing.Layout;

/**
 * A further vise on the table.
 *
 * @param name its label; empty if it is the same as the vise drawn in full
 */
public record Neighbour(Layout layout, String name) {}
