/**
 * Anchors, bolts in their holes or studs of strap clamps, over the slots of a table.
 *
 * <p><b>In:</b> the anchors of one mount, an orientation, and the slots of a table. <b>Out:</b> the
 * positions at which every anchor lines up with a slot, along and across the slots; where there are
 * none, by how much the anchors miss ({@link org.jawroom.placement.bolting.slot.Shortage}).
 *
 * <p>Lengths in half-nanometres, in the table frame; the limits of holes and of slot ends are
 * closed. Readings known within bounds are taken at worst or at best.
 */
package org.jawroom.placement.bolting.slot;
