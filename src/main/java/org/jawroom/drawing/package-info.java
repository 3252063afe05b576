/**
 * Pictures of a pairing, drawn once with Java2D and put out as SVG, PNG or PDF.
 *
 * <p>A picture is drawn in points (1/72 inch), x to the right, y down from its upper left corner,
 * and knows its size. It shows what an {@link org.jawroom.placement.pairing.Outcome} tells and
 * computes no clearance of its own: the boxes, the places and the limiting pair are the solver's.
 * Lengths become points here, at the edge, and only for the eye; every number written into a
 * picture is the exact one, rounded as everywhere toward less clearance.
 */
package org.jawroom.drawing;
