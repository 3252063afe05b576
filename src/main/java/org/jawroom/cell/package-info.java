/**
 * Converts a shop into a planning model, and its plan into what reports need.
 *
 * <p><b>In:</b> a {@link org.jawroom.shop.Shop} whose machines are those of the cell, and one
 * {@link org.jawroom.cell.CellPairing} per pairing (machines, then vises, in input order).
 * <b>Out:</b> the {@link org.jawroom.plan.CellModel} to plan ({@link org.jawroom.cell.ShopCell})
 * and, once planned, the assignment of each machine and its reasons ({@link
 * org.jawroom.cell.CellPlan}). Pure: no files, no clock, no library.
 *
 * <p><b>A pairing may be chosen</b> if the table carries one such vise without work (as far as
 * masses are known) and it
 *
 * <ul>
 *   <li>{@code fits}, or is {@code limited}: then within the usable opening, which the plan states;
 *       or
 *   <li>holds at least one job.
 * </ul>
 *
 * <p>No other verdict qualifies: {@code measure} is no fit until it is measured, and {@code
 * unknown} is undecided.
 *
 * <p><b>Its margin</b> is that of the recommended placement. If it does not {@code fit} but holds
 * jobs, it is the least margin of those jobs, each at its own placement. <b>The count</b> on a
 * table is the number that stand side by side and that the table carries without work; 1 unless it
 * fits.
 *
 * <p><b>A job</b> is held by a pairing if its outcome there is {@code held}. Jobs of quantity 0 are
 * not part of the cell. <b>Money</b> is in hundredths. A candidate without a price cannot be bought
 * and is not part of the cell.
 */
package org.jawroom.cell;
