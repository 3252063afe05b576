/**
 * Computes the best plan for a cell: one kind of vise, and how many of it, or one vise each of
 * several kinds, per machine.
 *
 * <p><b>In:</b> a {@link org.jawroom.plan.model.CellModel} of machines, kinds of vise, pairings
 * that may be chosen and jobs, all referred to by index, and {@link org.jawroom.plan.model.Wishes}.
 * <b>Out:</b> a {@link org.jawroom.plan.model.Plan}. No files, and no clock except the remaining
 * time that the wishes supply.
 *
 * <p><b>A plan</b> gives each machine at most one of its fits. A fit with a kind takes at least one
 * vise of it, so no more fits have a kind than there are vises of it, purchases included. Another
 * form of a kind, the same vise turned on its base, takes one of that kind. Purchases are what
 * machines need beyond the stock. Candidates and vises for sale are used only with {@code buy}, and
 * candidate machines only if there are jobs, since nothing else justifies one.
 *
 * <p><b>Aims</b>, in lexicographic order:
 *
 * <ol>
 *   <li>with jobs: the most pieces held, within the budget if there is one;
 *   <li>the most machines equipped (without jobs within the budget);
 *   <li>the most of them comfortable and settable;
 *   <li>the widest usable openings, added up over the kinds on all tables;
 *   <li>the widest jaws, added up likewise;
 *   <li>with something to keep: the fewest changes, counted on each machine: a kind put on, one
 *       taken off, or one exchanged for another; the count of a kind does not matter;
 *   <li>the most vises set out, on each table up to the number that stand there, in total up to the
 *       stock;
 *   <li>the earliest vises, in cell order, on the first machine, then on the second, and so on.
 *       This makes the kinds unique; the rest of a kind goes to the first machines that have it.
 * </ol>
 *
 * <p>When buying, the least money spent comes right after the first of them. No aim is a margin:
 * one that is comfortable is never enlarged at the cost of opening or jaw.
 *
 * <p><b>For each job not held</b>, the cheapest purchase besides the plan's own with which it is
 * held together with every job that the plan holds, on the same machines or on others, whether or
 * not {@code buy} is set.
 *
 * <p><b>Proof.</b> First an exact search ({@code plan.exact}) seeks the best choice by all aims at
 * once; it finds and proves it, or gives upper bounds. Each aim whose value equals its upper bound
 * is proven. Any other is a mixed-integer program of its own, with the values reached before as
 * constraints. Every choice from the solver is verified in whole numbers, constraints and values,
 * before it becomes the incumbent; a plan never violates a constraint, whatever the solver claims.
 * Its optimality is proven if the solver has searched exhaustively, coefficients are small enough
 * for doubles ({@code Program.CERTAIN}), the objective equals the recounted value, and the solver
 * does not complain about its own arithmetic. Otherwise the stage is marked as not proven, with the
 * upper bound.
 */
package org.jawroom.plan;
