/**
 * Positions on the table and the free ones among them: where a mount holds ({@link
 * org.jawroom.placement.space.Strips}), less what walls and obstacles forbid ({@link
 * org.jawroom.placement.space.FreeSpace}).
 *
 * <p>A position is that of the vise frame's origin in the table frame, in whole half-nanometres.
 * All sets are closed: touching counts as clear.
 */
package org.jawroom.placement.space;
