/**
 * Exact lengths, intervals, boxes and orientations.
 *
 * <p><b>Unit.</b> Every length is a {@code long} of whole half-nanometres ({@link Length#MM} per
 * millimetre), so that half of a width or travel in whole nanometres is exact as well. There is no
 * epsilon.
 *
 * <p><b>Boxes are closed</b> and axis-aligned. Two boxes that touch have gap 0. A side may be
 * unbounded: its limit is then {@link Length#ENDLESS} or its negative.
 *
 * <p><b>Axes</b> (letters and directions after ISO 841; the tool is taken to move over the table):
 * X to the right as the operator sees it, Y away from the operator, Z up along the spindle.
 *
 * <p>This package does not depend on shops, files or the search.
 */
package org.jawroom.geometry;
