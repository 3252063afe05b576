/**
 * The best plan for a cell: one kind of vise, and how many, for each machine.
 *
 * <p><b>In:</b> a {@link org.jawroom.plan.CellModel} of machines, kinds of vise, pairings that may
 * be chosen and jobs, all by their place in its lists, and {@link org.jawroom.plan.Wishes}.
 * <b>Out:</b> a {@link org.jawroom.plan.Plan}. No files, no clock but the time left that the wishes
 * tell.
 *
 * <p><b>A plan</b> gives each machine one of its fits, or none. Each machine that has a kind has
 * one of it at least, so no more machines have a kind than there are vises of it, bought ones
 * included. What is bought is what machines have beyond the stock. Candidates, and vises for sale,
 * are used only with {@code buy}; candidate machines only where there are jobs: nothing else asks
 * for one.
 *
 * <p><b>In this order</b> it has, none at the cost of one before:
 *
 * <ol>
 *   <li>with jobs: the largest quantity of jobs that some machine holds, within the budget if there
 *       is one; without: the most machines equipped;
 *   <li>when buying: the least money spent;
 *   <li>with jobs: the most machines equipped; without: the widest total opening. A machine asked
 *       about is to get a vise: left to the margin alone, all that hold no job would stay bare;
 *   <li>the largest least margin among the fits chosen;
 *   <li>with something to keep: the fewest machines whose kind is another than now, or that are
 *       equipped and were bare, or the other way round; how many of the kind is no change;
 *   <li>the most vises set out, on each table as many as stand there, in all as many as the stock
 *       has;
 *   <li>the earliest vise, by the order of the cell, on the first machine, then on the second, and
 *       so on. This makes the kinds unique; what is left of a kind goes to the first machines that
 *       have it.
 * </ol>
 *
 * <p><b>For each job left</b>, the cheapest purchase beside the plan's own with which it is held
 * and every job the plan holds is too, on the same machines or on others, whether {@code buy} was
 * asked for or not.
 *
 * <p><b>Proof.</b> Each aim is a mixed-integer program of its own, with what was reached before as
 * constraints; the margin is a search by halving over which fits are left, so that no margin is
 * ever rounded. A choice that the solver gives is counted again in whole numbers, for every
 * constraint and value, before it is taken over; a plan never breaks a rule, whatever the solver
 * says. That none is better rests on the solver having searched all, on amounts small enough for
 * doubles ({@code Program.CERTAIN}), and on its value being that of the choice counted again, on
 * its not having complained of its own arithmetic; or on the value being as large as could be.
 * Otherwise the stage is not proven, and says so.
 */
package org.jawroom.plan;
