/**
 * Explains pairings and finds what would make them fit, by solving again with one thing changed.
 *
 * <p><b>In:</b> settings, a machine, a vise and their {@link
 * org.jawroom.placement.pairing.Outcome}. <b>Out:</b> {@link org.jawroom.advice.Advice} for the
 * reports of a whole shop, {@link org.jawroom.advice.Explanation} for a single pairing. Pure, like
 * the solver.
 *
 * <p><b>Amounts</b> are the least whole multiples of 0.01 mm that serve: applied to the inputs,
 * each makes the pairing fit, and 0.01 mm less does not.
 */
package org.jawroom.advice;
