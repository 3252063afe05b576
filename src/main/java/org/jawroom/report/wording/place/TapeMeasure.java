package org.jawroom.report.wording.place;

import org.jawroom.shop.machine.Side;

/**
 * One tape measurement.
 *
 * @param what the feature of the vise: {@code base's left side}
 * @param edge the edge of the table: left or front
 * @param distance inward from that edge; negative: beyond it
 */
public record TapeMeasure(String what, Side edge, long distance) {}
