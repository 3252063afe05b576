/**
 * Pictures of a pairing, drawn once with Java2D and written as SVG, PNG or PDF.
 *
 * <p>A picture is drawn in points (1/72 inch), x to the right, y down from its upper left corner,
 * and has a fixed size. It shows an {@link org.jawroom.placement.pairing.Outcome} and computes no
 * clearance of its own: the boxes, the places and the limiting pair are the solver's. Lengths
 * become points here, at the edge, and only for display; every number written into a picture is the
 * exact one, rounded toward less clearance as everywhere.
 */
package org.jawroom.drawing;
