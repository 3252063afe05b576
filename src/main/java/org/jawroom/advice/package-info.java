/**
 * Why a pairing is as it is, and what would make it fit; built on the solver, which it asks again
 * with one thing changed.
 *
 * <p><b>In:</b> settings, a machine, a vise and their {@link
 * org.jawroom.placement.pairing.Outcome}. <b>Out:</b> {@link org.jawroom.advice.Advice} for the
 * reports of a whole shop, {@link org.jawroom.advice.Explanation} for a single pairing. Pure, like
 * the solver.
 *
 * <p><b>Amounts</b> are whole multiples of 0.01 mm: the least that serve, so that every claim,
 * applied to the inputs, makes the pairing fit, and a hundredth less does not.
 */
package org.jawroom.advice;
