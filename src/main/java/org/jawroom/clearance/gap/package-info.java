/**
 * Gaps and margins between one part and one guard at a placement, by section 5 of the model, and
 * the witness of the least.
 *
 * <p>{@link org.jawroom.clearance.gap.MarginField} keeps every pair as it is, for explanations and
 * as the twin of the folded form. Ties go to the guard, then the part, that comes first, then to
 * cutting.
 */
package org.jawroom.clearance.gap;
