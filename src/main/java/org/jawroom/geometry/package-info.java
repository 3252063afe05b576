/**
 * Exact lengths, intervals, boxes and turns.
 *
 * <p><b>Unit.</b> Every length is a {@code long} of whole half-nanometres ({@link Length#MM} to the
 * millimetre), so that half a width or half a travel of whole nanometres is exact too. There is no
 * epsilon anywhere.
 *
 * <p><b>Boxes are closed</b> and have their sides along the axes. Two boxes that touch have gap 0.
 * A side may be without end: its limit is then {@link Length#ENDLESS} or its negative.
 *
 * <p><b>Axes</b> (letters and directions after ISO 841; the tool is taken to move over the table):
 * X to the right as the operator sees it, Y away from the operator, Z up along the spindle.
 *
 * <p>This package knows nothing of shops, files or searching.
 */
package org.jawroom.geometry;
