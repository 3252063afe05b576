package org.jawroom.report.wording;

import org.jawroom.shop.Side;

/**
 * What a tape is laid to.
 *
 * @param what of the vise: {@code base's left side}
 * @param edge of the table: left or front
 * @param distance from that edge, inward; negative: beyond it
 */
public record TapeMeasure(String what, Side edge, long distance) {}
