/**
 * The guards of a machine as boxes in the table frame, swept over the travel of the axes and the
 * heights of the nose, by section 2 of the model.
 *
 * <p>A side without end is {@link org.jawroom.geometry.Length#ENDLESS}. Heights are above the table
 * top, also of guards that move against the table along z. All boxes are closed.
 */
package org.jawroom.clearance.guard;
