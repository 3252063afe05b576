/**
 * Where a vise can be bolted or clamped: mounts over {@link org.jawroom.placement.bolting.slot
 * slots}, and overhang, per orientation.
 *
 * <p><b>Result:</b> regions, each of one orientation and one mount ({@link
 * org.jawroom.placement.bolting.Region}). Whatever depends on a machine or a vise alone is computed
 * once ({@link org.jawroom.placement.bolting.PreparedMachine}, {@link
 * org.jawroom.placement.bolting.PreparedVise}). The limits of holes and of slot ends are closed.
 */
package org.jawroom.placement.bolting;
