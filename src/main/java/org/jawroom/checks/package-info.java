/**
 * What gaps found on the machine say of the tables, by section 10 of the model.
 *
 * <p><b>In:</b> a {@link org.jawroom.shop.Shop} with checks. <b>Out:</b> a {@link
 * org.jawroom.checks.Reconciliation}. Pure, like the solver.
 *
 * <p>Every end of a part and every face of a guard is a sum of readings with fixed signs ({@link
 * org.jawroom.checks.expected.LinearForm}), so that a gap is one, too. A reading is a value; an end
 * or a face has an error within its tolerance, the same in every check. A set of readings explains
 * checks if the polytope of all values and errors is not empty once those readings may have any
 * value. All arithmetic is rational and exact; all bounds are closed: a gap found exactly at the
 * end of what the tolerances allow agrees.
 *
 * <p>A vise is taken to stand where the two measures of the check say; its own measures are off by
 * up to the tolerance of the check, in each check anew. A jaw fully open or closed stands at {@code
 * opening_max} or {@code opening_min} as a reading; a stated opening is exact.
 */
package org.jawroom.checks;
