/**
 * Converts a shop into a planning model, and its plan into what reports need.
 *
 * <p><b>In:</b> a {@link org.jawroom.shop.Shop} whose machines are those of the cell, and one
 * {@link org.jawroom.cell.CellPairing} per pairing (machines, then vises, in input order), and the
 * sets of several kinds that stand side by side ({@link org.jawroom.cell.CellSets}). <b>Out:</b>
 * the {@link org.jawroom.plan.model.CellModel} to plan ({@link org.jawroom.cell.ShopCell}) and,
 * once planned, the assignment of each machine and its reasons ({@link org.jawroom.cell.CellPlan}).
 * Pure: no files, no clock, no library.
 *
 * <p><b>A pairing may be chosen</b> if the table carries one such vise without work (as far as
 * masses are known) and it
 *
 * <ul>
 *   <li>is {@code fits}, {@code awkward} or {@code limited}, with room over its jaws: it stands
 *       there, a limited one within its usable opening, which the plan states; or
 *   <li>holds at least one job.
 * </ul>
 *
 * <p>A vise turned on its swivel base is a pairing of its own, but the same piece of iron as its
 * row's: both take from one stock, and one more costs the price of the row.
 *
 * <p>No other verdict qualifies: {@code measure} is no fit until it is measured, and {@code
 * unknown} is undecided.
 *
 * <p><b>Its opening</b> is its usable opening, 0 if it has none. It is <b>good</b> if it stands
 * there with a comfortable margin in a settable place; where nothing listed can be hit there is no
 * margin to be comfortable. <b>The margin shown</b> is that of the recommended placement; if it
 * only holds jobs, the least margin of those jobs, each at its own placement. <b>The count</b> on a
 * table is the number that stand side by side and that the table carries without work; 1 for a
 * limited one.
 *
 * <p><b>Several kinds</b>, one vise of each, may be chosen if they stand side by side on the
 * machine, each over its full opening, each with room over its jaws, and not too heavy together, as
 * far as masses are known. Their opening and their jaw are those of all of them added up. They are
 * good if each has a comfortable margin in a settable place, and each gap between neighbours
 * exceeds the spacing by {@code comfort} and by the tap room. They hold the jobs that any of them
 * holds in its place in the row ({@link org.jawroom.placement.set.SetJobs}). Of each set one row is
 * considered, that with the largest least margin or gap; what another row would hold is not.
 *
 * <p><b>A job</b> is held by a pairing if its outcome there is {@code held}. Jobs of quantity 0 are
 * not part of the cell. <b>Money</b> is in hundredths. A candidate without a price cannot be bought
 * and is not part of the cell.
 */
package org.jawroom.cell;
