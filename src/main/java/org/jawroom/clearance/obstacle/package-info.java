/**
 * Pairs folded into what a search needs: four walls and a list of obstacles in the space of
 * positions, margin(x, y) = max(a − x, x − b, c − y, y − d, f).
 *
 * <p>Positions are those of the vise frame's origin in the table frame, in half-nanometres. Folding
 * loses no pair that can limit a margin.
 */
package org.jawroom.clearance.obstacle;
