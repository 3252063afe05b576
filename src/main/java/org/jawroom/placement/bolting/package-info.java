/**
 * Where a vise can be bolted or clamped: slots, mounts and overhang, per orientation.
 *
 * <p><b>Out:</b> regions, each of one orientation and one mount ({@link
 * org.jawroom.placement.bolting.Region}); what depends on a machine or a vise alone is computed
 * once ({@link org.jawroom.placement.bolting.PreparedMachine}, {@link
 * org.jawroom.placement.bolting.PreparedVise}). Limits of holes and slot ends count as holding.
 */
package org.jawroom.placement.bolting;
