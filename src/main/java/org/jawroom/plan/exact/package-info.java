/**
 * Bounds and proofs in whole numbers for aims that are sums over the machines, all of them at once.
 *
 * <p><b>The worth</b> of a choice is one number: the values of the aims as its digits, the first
 * aim highest, the order of the tables last ({@code Worths}). So the best choice is the one of
 * greatest worth, and it is unique.
 *
 * <p><b>The relaxation</b> forgets which jobs must be held, takes the first scarce kind alone of
 * several on a table, and counts what is set out machine by machine. What is left is an assignment
 * of machines to kinds, as many as there are of each: the Hungarian method solves it, its prices
 * prove it and bound what each fit would lose (H. W. Kuhn, The Hungarian method for the assignment
 * problem, 1955; from memory). No choice is worth more than the relaxation.
 *
 * <p><b>The search</b> ({@link org.jawroom.plan.exact.ExactSearch}) branches on jobs that must be
 * held and are not. It ends after a number of steps, the same on every computer, or when time runs
 * out; what it then leaves open remains in the {@link org.jawroom.plan.exact.Bound}. With several
 * kinds on a table, a budget, or vises that stand on one table but are missed on another, it may
 * leave the bound open although the search is over.
 */
package org.jawroom.plan.exact;
