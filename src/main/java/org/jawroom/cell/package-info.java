/**
 * A shop as something to plan with, and its plan as something to report.
 *
 * <p><b>In:</b> a {@link org.jawroom.shop.Shop} whose machines are those of the cell, and one
 * {@link org.jawroom.cell.CellPairing} for each pairing (machines, then vises, in input order).
 * <b>Out:</b> the {@link org.jawroom.plan.CellModel} to plan ({@link org.jawroom.cell.ShopCell});
 * once planned, what each machine gets and why ({@link org.jawroom.cell.CellPlan}). Pure: no files,
 * no clock, no library.
 *
 * <p><b>A pairing may be chosen</b> if the table carries one such vise bare (as far as masses are
 * told) and it
 *
 * <ul>
 *   <li>{@code fits}, or is {@code limited}: then within the usable opening, which the plan tells;
 *       or
 *   <li>holds at least one job.
 * </ul>
 *
 * <p>Nothing else: {@code measure} is no fit until somebody has measured, and {@code unknown} is
 * unknown.
 *
 * <p><b>Its margin</b> is that in the recommended place. Where it does not {@code fit} but holds
 * jobs it is the least margin of those jobs, each in its own place. <b>How many</b> stand on a
 * table is as many as stand side by side and the table carries bare; one, unless it fits.
 *
 * <p><b>A job</b> is held by a pairing if its outcome there says so. Jobs of quantity 0 weigh
 * nothing and are not of the cell. <b>Money</b> is in hundredths. A candidate without a price
 * cannot be bought and is not of the cell.
 */
package org.jawroom.cell;
