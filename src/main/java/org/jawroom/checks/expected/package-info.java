/**
 * Gaps as sums of readings: every end of a part and every face of a guard is one, with fixed signs,
 * and so is the gap that a check expects.
 *
 * <p>Lengths are half-nanometres, axes as in the table frame and the vise frame of the model. Of a
 * part and a guard the side on which they face each other is fixed by the readings as written.
 */
package org.jawroom.checks.expected;
