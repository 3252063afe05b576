/**
 * The parts of a vise as boxes in the vise frame, by section 4 of the model.
 *
 * <p>A part's u limits run linearly with the opening, from a closed to an open value; v and w
 * limits are fixed. With readings known within bounds a part is the smallest box that holds it for
 * every value (at worst), or what all values share (at best). All boxes are closed.
 */
package org.jawroom.clearance.part;
