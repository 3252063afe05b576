/**
 * What looks wrong in a shop that was read without a fault.
 *
 * <p><b>In:</b> a {@link org.jawroom.shop.Shop}. <b>Out:</b> {@link
 * org.jawroom.plausibility.Warnings#of}, a list of {@link org.jawroom.plausibility.Warning}s: each
 * machine in input order, its row before its guards; each vise; then pairings of the two. Each says
 * in which table, row and column, what looks wrong and what to do about it, in one line.
 *
 * <p><b>A warning is not a fault.</b> Whatever gets a warning is accepted, since it can be true,
 * and no warning changes a verdict.
 *
 * <p><b>The solver is asked.</b> Which columns a pairing needs, where guards and slots stand and
 * how far a base hangs over are computed by {@link org.jawroom.clearance} and {@link
 * org.jawroom.placement.bolting}, so that a warning and a verdict cannot differ. Limits of what is
 * believable are this package's own; published ones are in {@link org.jawroom.standards}.
 *
 * <p>Pure: no files, no clock, no libraries. Readers of tables do not know this package; who reads
 * a shop and wants warnings asks for them.
 */
package org.jawroom.plausibility;
